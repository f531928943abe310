import { expect, test } from 'vitest';
import { reasonsForOrder } from '../../../src/engine/plan';
import { seedCatalogue } from '../../support/seed-catalogue';

test('[P49] a step says what it comes after, relies on, is waited for by and holds up', () => {
  const step = (id: string, after: string[] = [], reliesOn: string[] = []) => ({
    id,
    after,
    reliesOn,
  });
  const steps = [
    step('a'),
    step('b'),
    step('c', ['a', 'b'], ['b']),
    step('d', ['c']),
    step('e', ['c'], ['c']),
  ];
  const ids = (found: readonly { readonly id: string }[]) => found.map(({ id }) => id);
  const { after, reliesOn, before, heldUp } = reasonsForOrder(steps, 'c');
  expect([ids(after), ids(reliesOn), ids(before), ids(heldUp)]).toEqual([
    ['a'],
    ['b'],
    ['d'],
    ['e'],
  ]);
});

test('[P49] the bar’s alignment relies on the steerer clamp (common practice, no source)', () => {
  const { heldUp } = reasonsForOrder(seedCatalogue().steps, 'steerer-clamp');
  expect(heldUp.map(({ id }) => id)).toContain('bar-alignment');
});

test('[P49] a step that is not there has no neighbours', () => {
  expect(reasonsForOrder([], 'moon')).toEqual({ after: [], reliesOn: [], before: [], heldUp: [] });
});
