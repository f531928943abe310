import { expect, test } from 'vitest';
import { remainingEffort, resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const resolved = resolvePlan(
  bikeFrom(mountainBike),
  catalogueOf({
    steps: [
      { id: 'a', effort: [1, 2, 3] },
      { id: 'b', effort: [2, 4, 6] },
      { id: 'c', effort: [1, 4, 7] },
    ],
  }),
);
if (!resolved.ok) throw new Error('a plan was expected');
const plan = resolved.value;

test.each<
  [
    situation: string,
    done: readonly string[] | ReadonlySet<string>,
    expected: number,
    variance: number,
  ]
>([
  ['nothing done', [], 10, 1 / 9 + 4 / 9 + 1],
  ['one done', ['c'], 6, 5 / 9],
  ['a set of done steps', new Set(['a', 'b']), 4, 1],
  ['a step the plan does not have changes nothing', ['z'], 10, 14 / 9],
  ['all done', ['a', 'b', 'c'], 0, 0],
])('[P12] %s', (_, done, expected, variance) => {
  const effort = remainingEffort(plan, { done });
  expect(effort.expected).toBeCloseTo(expected, 12);
  expect(effort.spread).toBeCloseTo(Math.sqrt(variance), 12);
});
