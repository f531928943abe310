import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

type Rows = Parameters<typeof catalogueOf>[0]['steps'];
const bike = bikeFrom(mountainBike);

function planFrom(steps: Rows): Plan {
  const plan = resolvePlan(bike, catalogueOf({ steps }));
  if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
  return plan.value;
}

const orderOf = (steps: Rows) => planFrom(steps).steps.map((step) => step.id);

describe('what must come first', () => {
  test.each<[situation: string, steps: Rows, order: string[]]>([
    ['after', [{ id: 'b', after: ['a'] }, { id: 'a' }], ['a', 'b']],
    ['relies on', [{ id: 'b', reliesOn: ['a'] }, { id: 'a' }], ['a', 'b']],
    [
      'both, through others, against the zones',
      [
        { id: 'd', zone: 'seat', after: ['c'] },
        { id: 'b', zone: 'cockpit', reliesOn: ['a'] },
        { id: 'c', zone: 'frame', after: ['b'] },
        { id: 'a', zone: 'seat' },
      ],
      ['a', 'b', 'c', 'd'],
    ],
  ])('[P4] %s', (_, steps, order) => {
    expect(orderOf(steps)).toEqual(order);
  });
});

describe('as few changes as possible', () => {
  test.each<[situation: string, steps: Rows, order: string[]]>([
    [
      'stays in the zone while something there is free',
      [
        { id: 'seat-1', zone: 'seat' },
        { id: 'bar-1', zone: 'cockpit' },
        { id: 'seat-2', zone: 'seat' },
        { id: 'bar-2', zone: 'cockpit' },
      ],
      ['seat-1', 'seat-2', 'bar-1', 'bar-2'],
    ],
    [
      'in the zone stays on the side',
      [
        { id: 'left-crank', side: 'left' },
        { id: 'right-crank', side: 'right' },
        { id: 'left-pedal', side: 'left' },
        { id: 'right-pedal', side: 'right' },
      ],
      ['left-crank', 'left-pedal', 'right-crank', 'right-pedal'],
    ],
    [
      'a step without a side, or on both, does not make anyone walk',
      [
        { id: 'left-1', side: 'left' },
        { id: 'both', side: 'both' },
        { id: 'right', side: 'right' },
        { id: 'left-2', side: 'left' },
        { id: 'anywhere' },
      ],
      ['left-1', 'both', 'left-2', 'anywhere', 'right'],
    ],
    [
      'from the side that spares a walk round the bike',
      [
        { id: 'frame-left', side: 'left' },
        { id: 'seat-left', zone: 'seat', side: 'left' },
        { id: 'frame-right', side: 'right' },
      ],
      ['seat-left', 'frame-left', 'frame-right'],
    ],
    [
      'a tool in the hand is used where it is needed, before it is laid down',
      [
        { id: 'clamp', zone: 'cockpit', tools: ['4 mm hex'] },
        { id: 'bell', zone: 'cockpit', tools: ['Screwdriver'] },
        { id: 'reach', zone: 'cockpit', tools: ['4 mm hex'] },
        { id: 'saddle', zone: 'seat', tools: ['4 mm hex'] },
      ],
      ['bell', 'clamp', 'reach', 'saddle'],
    ],
    [
      'nothing to choose by: as in the catalogue',
      [{ id: 'c' }, { id: 'a' }, { id: 'b' }],
      ['c', 'a', 'b'],
    ],
  ])('[P5] %s', (_, steps, order) => {
    expect(orderOf(steps)).toEqual(order);
  });
});

describe('circles', () => {
  test('[P6] a circle over both kinds of reference is refused by name', () => {
    const catalogue = catalogueOf({
      steps: [
        { id: 'free' },
        { id: 'a', after: ['c'] },
        { id: 'b', reliesOn: ['a'] },
        { id: 'c', after: ['b'] },
      ],
    });
    const refused = resolvePlan(bike, catalogue);
    if (refused.ok || refused.refusal.code !== 'plan-cycle')
      throw new Error('a circle was expected');
    expect([...new Set(refused.refusal.cycle)].sort()).toEqual(['a', 'b', 'c']);
  });

  test('[P6] a circle that this bike does not have does not stand in its way', () => {
    const steps = [
      { id: 'a', after: ['b'] },
      { id: 'b', after: ['a'], when: { ask: 'extras', has: 'rack' } },
    ];
    expect(orderOf(steps)).toEqual(['a']);
  });
});

/** Steps of which each may wait only for steps drawn before it. */
const stepRows = fc
  .array(
    fc.record({
      zone: fc.constantFrom('frame', 'cockpit', 'seat', 'drivetrain'),
      side: fc.constantFrom('left', 'right', 'both', 'middle'),
      after: fc.array(fc.nat({ max: 14 }), { maxLength: 3 }),
      reliesOn: fc.array(fc.nat({ max: 14 }), { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 15 },
  )
  .map((rows) =>
    rows.map((row, index) => {
      const earlier = (list: readonly number[]) =>
        [...new Set(list)].filter((other) => other < index).map((other) => `s${other}`);
      return {
        ...row,
        id: `s${index}`,
        after: earlier(row.after),
        reliesOn: earlier(row.reliesOn),
      };
    }),
  );

const shuffled = stepRows.chain((rows) =>
  fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length })),
);

describe('any catalogue without a circle', () => {
  test('[P4] every step stands once, after all that it waits for', () => {
    fc.assert(
      fc.property(shuffled, ([rows, reordered]) => {
        const order = orderOf(reordered);
        expect([...order].sort()).toEqual(rows.map((row) => row.id).sort());
        for (const row of rows)
          for (const other of [...row.after, ...row.reliesOn])
            expect(order.indexOf(other)).toBeLessThan(order.indexOf(row.id));
      }),
      { seed: 2405 },
    );
  });

  test('[P5] where what must come first leaves no choice, the catalogue’s order changes nothing', () => {
    fc.assert(
      fc.property(shuffled, ([rows, reordered]) => {
        const chained = (list: typeof rows) =>
          list.map((row) => {
            const position = Number(row.id.slice(1));
            return { ...row, after: position === 0 ? [] : [...row.after, `s${position - 1}`] };
          });
        expect(planFrom(chained(reordered))).toEqual(planFrom(chained(rows)));
      }),
      { seed: 2407 },
    );
  });

  test('[P2] another order of the catalogue gives the same steps, each with the same content', () => {
    const byId = (plan: Plan) => new Map(plan.steps.map((step) => [step.id, step]));
    fc.assert(
      fc.property(shuffled, ([rows, reordered]) => {
        expect(byId(planFrom(reordered))).toEqual(byId(planFrom(rows)));
      }),
      { seed: 2408 },
    );
  });
});
