import { expect, test } from 'vitest';
import { type Unusual, unusualIn } from '../../../src/engine/job';
import { figureSchema } from '../../../src/engine/torque';
import {
  doing,
  nothingYet,
  opened,
  type Played,
  petra,
  sunniva,
} from '../../support/given-when-then';
import { built, frozen, handedOver, smallPlan, stepsDone, walked } from '../../support/small-job';

const whole = walked(built(opened(smallPlan)));
const usual = figureSchema.parse({
  min: 4,
  max: 6,
  source: { kind: 'usual', acceptedBy: 'imre' },
});
const unlimited = frozen({});
for (const step of unlimited.steps)
  for (const measure of step.measures) measure.limit = { source: 'read it on the tyre' };

function tightenedToUsualRange(): Played {
  return built(
    doing(opened(smallPlan), { kind: 'enter-figure', joint: 'lever-bolts', figure: usual }),
  );
}

function redone(): Played {
  const reopened = doing(whole, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
  return stepsDone(reopened, ['stem', 'levers'], petra);
}

function boxWith(plan: typeof smallPlan, cartonDamage: string): Played {
  return doing(nothingYet(plan), { kind: 'receive-box', bike: plan.bike, cartonDamage });
}

const raised = doing(whole, {
  kind: 'raise-finding',
  finding: 'f',
  severity: 'stop-ride',
  text: 'A crack.',
});

test.each<[situation: string, job: Played, unusual: readonly Unusual[]]>([
  ['nothing', handedOver(), []],
  [
    'a finding let go',
    doing(raised, { kind: 'allow-finding', finding: 'f', reason: 'Known.' }, sunniva),
    [
      {
        code: 'unusual-finding',
        finding: 'f',
        severity: 'stop-ride',
        text: 'A crack.',
        closed: undefined,
        allowed: 'Known.',
      },
    ],
  ],
  [
    'a finding put right',
    doing(raised, { kind: 'close-finding', finding: 'f', how: 'Mended.' }),
    [
      {
        code: 'unusual-finding',
        finding: 'f',
        severity: 'stop-ride',
        text: 'A crack.',
        closed: 'Mended.',
        allowed: undefined,
      },
    ],
  ],
  [
    'a usual range, with who accepted it',
    tightenedToUsualRange(),
    [{ code: 'unusual-usual-range', step: 'levers', joint: 'lever-bolts', acceptedBy: 'imre' }],
  ],
  [
    'what was done again, with why',
    redone(),
    [
      { code: 'unusual-reopened', step: 'stem', times: 2, reason: 'A creak.' },
      { code: 'unusual-reopened', step: 'levers', times: 2, reason: 'A creak.' },
    ],
  ],
  [
    'a point that was adjusted',
    doing(whole, { kind: 'look-at-point', point: 'paint', verdict: 'adjusted', note: 'Polished.' }),
    [{ code: 'unusual-point-adjusted', point: 'paint', note: 'Polished.' }],
  ],
  [
    'a damaged part',
    doing(whole, {
      kind: 'check-contents',
      parts: [{ part: 'manual', state: 'damaged', note: 'Torn.' }],
    }),
    [{ code: 'unusual-part-damaged', part: 'manual', note: 'Torn.' }],
  ],
  [
    'a damaged carton',
    boxWith(smallPlan, 'A hole.'),
    [{ code: 'unusual-carton', damage: 'A hole.' }],
  ],
  [
    'a measure that no limit decides',
    doing(opened(unlimited), { kind: 'take-measure', at: 'post', measure: 'insertion', value: 70 }),
    [{ code: 'unusual-measure-undecided', at: 'post', measure: 'insertion', value: 70 }],
  ],
])('[J24] lists for the second checker: %s', (_, { state }, unusual) => {
  expect(unusualIn(state)).toEqual(unusual);
});
