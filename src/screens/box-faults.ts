/** What is not right about a box that is typed: for each place in the description, what to write there. */

import {
  type Bike,
  bikeSchema,
  checkEntry,
  contradictionsIn,
  entryBounds,
  isGtin,
} from '../engine/bike';
import { tyreEntryFaults } from '../engine/plan';
import { words } from '../words';

/** What stands in the fields that are read beyond the shape of a description. */
export interface TypedEntries {
  readonly gtin: string | undefined;
  /** By the place they fill; not a number where none was typed. */
  readonly numbers: Readonly<Record<string, number | undefined>>;
  readonly front: TypedWheel;
  readonly rear: TypedWheel;
}

interface TypedWheel {
  readonly tyre: string;
  readonly tyrePressure: string | undefined;
}

/** Sentences by place, for what has the wrong shape. */
const shapes: Readonly<Record<string, string>> = {
  gtin: words.goodsIn.gtinShape,
  frameNumber: words.goodsIn.frameShape,
  'front.tyre': words.goodsIn.tyreShape,
  'rear.tyre': words.goodsIn.tyreShape,
};

export type FaultsByPlace = ReadonlyMap<string, string>;

/** The bike, where everything about it may go into the book; what its plan would refuse is refused here, beside the field. */
export function readBox(
  described: unknown,
  typed: TypedEntries,
): { readonly bike?: Bike | undefined; readonly wrong: FaultsByPlace } {
  const parsed = bikeSchema.safeParse(described);
  const wrong = new Map<string, string>();
  for (const { path } of parsed.success ? [] : parsed.error.issues) {
    const place = path.join('.');
    const bounds = entryBounds[place];
    const refused = { code: 'entry-out-of-bounds', ...bounds };
    wrong.set(place, bounds ? words.refusal(refused) : (shapes[place] ?? words.goodsIn.needed));
  }
  for (const [place, sentence] of [...numberFaults(typed), ...tyreFaults(typed)])
    wrong.set(place, sentence);
  if (isAlike(typed)) for (const place of ['rear.tyre', 'rear.tyrePressure']) wrong.delete(place);
  if (typed.gtin !== undefined && !isGtin(typed.gtin)) wrong.set('gtin', words.goodsIn.gtinShape);
  if (parsed.success)
    for (const { one, other } of contradictionsIn(parsed.data)) {
      wrong.set(one.question, words.goodsIn.atOdds(other.question, other.answer));
      wrong.set(other.question, words.goodsIn.atOdds(one.question, one.answer));
    }
  return parsed.success && wrong.size === 0 ? { bike: parsed.data, wrong } : { wrong };
}

/** A rear tyre that is like the front one is complained of once. */
function isAlike({ front, rear }: TypedEntries): boolean {
  return front.tyre === rear.tyre && front.tyrePressure === rear.tyrePressure;
}

type Fault = readonly [place: string, sentence: string];

function numberFaults({ numbers }: TypedEntries): readonly Fault[] {
  return Object.entries(numbers).flatMap(([place, value]): readonly Fault[] => {
    const checked = value === undefined ? undefined : checkEntry(place, value);
    return checked === undefined || checked.ok
      ? []
      : [[place, words.refusal({ ...checked.refusal })]];
  });
}

/** A size that is empty is only needed. */
function tyreFaults({ front, rear }: TypedEntries): readonly Fault[] {
  return (['front', 'rear'] as const).flatMap((wheel) => {
    const { tyre, tyrePressure } = wheel === 'front' ? front : rear;
    return tyreEntryFaults(wheel, { tyre, tyrePressure, hookless: false }).map(
      ({ place, refusal }): Fault => [
        place,
        tyre === '' && place.endsWith('.tyre')
          ? words.goodsIn.tyreShape
          : words.refusal({ ...refusal }),
      ],
    );
  });
}
