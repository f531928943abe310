import { expect, test } from 'vitest';
import { type Unusual, unusualIn } from '../../../src/engine/job';
import { type Figure, figureSchema } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';
import {
  doing,
  nothingYet,
  opened,
  type Played,
  petra,
  sunniva,
} from '../../support/given-when-then';
import {
  built,
  contentsChecked,
  frozen,
  handedOver,
  printedFigure,
  smallPlan,
  stepsDone,
  walked,
} from '../../support/small-job';
import { wrench } from '../../support/wrenches';

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
  return tightenedTo(usual);
}

function tightenedTo(figure: Figure): Played {
  return built(doing(opened(smallPlan), { kind: 'enter-figure', joint: 'lever-bolts', figure }));
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
    'a figure far from what such a joint takes, kept all the same',
    tightenedTo(
      figureSchema.parse({ min: 20, max: 24, source: { kind: 'part', printed: '20–24' } }),
    ),
    [
      {
        code: 'unusual-figure-far',
        step: 'levers',
        joint: 'lever-bolts',
        figure: { min: newtonMetres(20), max: newtonMetres(24) },
      },
    ],
  ],
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
        allowedBy: 'sunniva',
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

/** Read bolt by bolt on a wrench that is within ± 4 %: 5.1 may be below 5, 6.3 is above 6 (guard band of ISO 14253-1). */
function readings(last: readonly (readonly [bolt: number, value: number])[]): Played {
  const fine = wrench({ increment: 0.1 });
  const start = doing(stepsDone(contentsChecked(opened(smallPlan)), ['clamp']), {
    kind: 'enter-figure',
    joint: 'stem-bolts',
    figure: printedFigure(5, 6),
  });
  return [1, 2, 3].reduce(
    (job, pass) =>
      doing(job, {
        kind: 'make-pass',
        step: 'stem',
        pass,
        wrench: fine,
        readings: pass < 3 ? [] : last.map(([bolt, value]) => ({ bolt, value, text: `${value}` })),
      }),
    start,
  );
}

test.each<
  [
    situation: string,
    last: readonly (readonly [number, number])[],
    told: readonly Partial<Unusual>[],
  ]
>([
  [
    'readings well inside',
    [
      [1, 5.5],
      [2, 5.5],
    ],
    [],
  ],
  [
    'a reading too near the end',
    [
      [1, 5.5],
      [2, 5.1],
    ],
    [{ undecided: [2], above: [] }],
  ],
  [
    'a bolt once read above',
    [
      [3, 6.3],
      [3, 5.5],
    ],
    [{ undecided: [], above: [3] }],
  ],
  [
    'a bolt that only took two pulls',
    [
      [3, 4.5],
      [3, 5.5],
    ],
    [],
  ],
  [
    'a bolt undecided first and inside at last',
    [
      [1, 5.1],
      [1, 5.5],
    ],
    [],
  ],
])('[J35] tells the second checker of %s what there is to tell', (_, last, told) => {
  const found = unusualIn(readings(last).state).filter(({ code }) => code === 'unusual-readings');
  expect(found).toEqual(
    told.map((one) => ({
      code: 'unusual-readings',
      step: 'stem',
      joint: 'stem-bolts',
      ...one,
    })),
  );
});
