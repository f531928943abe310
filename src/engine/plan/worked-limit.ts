/** Measures with their limits worked out for one bike. */

import { assert, ok, type Refusal, type Result } from '../base';
import type { Bike } from '../bike';
import { type Insertion, minimumInsertion, minimumQuillInsertion } from '../fit';
import { millimetres } from '../units';
import type { Limit, LimitRule, Measure } from './catalogue.schema';
import type { PlanMeasure } from './plan.schema';
import { type TyreLimitRefusal, tyreLimit } from './tyre-limit';

/**
 * The measure with its limit as numbers with their source: insertions in mm, tyre pressures in kPa (with where to
 * aim, when the printed range tells). A tyre whose pressure is not known gets no numbers, so that nothing is judged
 * good against a guess. Refuses markings that are not understood or that leave no pressure at all.
 */
export function workedMeasure(
  bike: Bike,
  { limit, ...measure }: Measure,
): Result<PlanMeasure, LimitRefusal> {
  if (!('rule' in limit)) return ok({ ...measure, limit });
  const worked = workedLimit(bike, limit.rule);
  return worked.ok ? ok({ ...measure, ...worked.value }) : worked;
}
export type LimitRefusal = Refusal & TyreLimitRefusal;

type WorkedLimit = Pick<PlanMeasure, 'limit' | 'suggested'>;

function workedLimit(bike: Bike, rule: LimitRule): Result<WorkedLimit, TyreLimitRefusal> {
  switch (rule) {
    case 'tyre-window-front':
      return tyreLimit('front', bike.front);
    case 'tyre-window-rear':
      return tyreLimit('rear', bike.rear);
    case 'seat-post-insertion':
      return ok({ limit: postLimit(bike) });
    case 'quill-insertion':
      return ok({ limit: quillLimit });
  }
}

const insertionSources = {
  diameter:
    'twice the post’s diameter (16 CFR 1512.15, JIS D 9301); the post’s own mark, if greater, rules',
  shape:
    '65 mm for a post that is not round (JIS D 9301, as summarised); the post’s own mark, if greater, rules',
  mark: 'the mark on the post',
  frame: 'the frame maker’s minimum',
} as const satisfies Record<Insertion['limitedBy'], string>;

function postLimit({ seat, frame }: Bike): Limit {
  const insertion = minimumInsertion({
    post: { diameter: millimetres(seat.postDiameter), circular: seat.postShape !== 'not-round' },
    ...(frame.minimumInsertion !== undefined && {
      frame: { minimum: millimetres(frame.minimumInsertion) },
    }),
  });
  assert(insertion.ok, 'a post of unknown length is never too short');
  const { minimum, limitedBy } = insertion.value;
  return { min: minimum, source: insertionSources[limitedBy] };
}

/** The quill of every stem for a one-inch steerer. Source: ISO 4210-2 and common practice (from memory). */
const quillDiameter = millimetres(22.2);

const quillLimit: Limit = {
  min: minimumQuillInsertion({ diameter: quillDiameter }).minimum,
  source:
    'two and a half times the quill’s 22.2 mm (16 CFR 1512.6, ISO 4210-2, from memory); the stem’s own mark, if greater, rules',
};
