/** Orders of bolts. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Layout, layoutShapes, tighteningOrder } from '../../../src/engine/torque';

describe('tighteningOrder', () => {
  test.each<[shape: Layout['shape'], bolts: number, order: readonly number[], source: string]>([
    ['ring', 1, [1], 'nothing to choose'],
    ['ring', 2, [1, 2], 'nothing to choose'],
    ['ring', 3, [1, 2, 3], 'nothing to choose'],
    ['ring', 4, [1, 3, 2, 4], 'ASME PCC-1 legacy cross pattern, from memory'],
    ['rectangle', 4, [1, 3, 2, 4], 'ASME PCC-1; faceplate: common practice, no source'],
    ['ring', 5, [1, 3, 5, 2, 4], 'star: common practice, no source'],
    ['ring', 6, [1, 4, 2, 5, 3, 6], 'star, rotor bolts: common practice, no source'],
    ['rectangle', 6, [1, 4, 2, 5, 3, 6], 'as a ring of six'],
    ['ring', 7, [1, 4, 7, 3, 6, 2, 5], 'star: common practice, no source'],
    ['ring', 8, [1, 5, 3, 7, 2, 6, 4, 8], 'ASME PCC-1 legacy cross pattern, from memory'],
    ['ring', 10, [1, 6, 3, 8, 5, 10, 2, 7, 4, 9], 'opposite pairs, spread'],
    ['ring', 12, [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12], 'ASME PCC-1 legacy, from memory'],
    [
      'ring',
      16,
      [1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16],
      'ASME PCC-1, from memory',
    ],
    ['ring', 9, [1, 5, 9, 4, 8, 3, 7, 2, 6], 'star: common practice, no source'],
    ['ring', 11, [1, 6, 11, 5, 10, 4, 9, 3, 8, 2, 7], 'star: common practice, no source'],
    [
      'ring',
      20,
      [1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19],
      'ASME PCC-1, from memory',
    ],
    ['opposed', 2, [1, 2], 'fixed cup first: common practice, no source'],
    ['pair', 2, [1, 2], 'two pinch bolts alternate: common practice, no source'],
    ['line', 2, [1, 2], 'two in line alternate: common practice, no source'],
    ['line', 3, [2, 1, 3], 'from the middle: common practice, no source'],
    ['line', 4, [2, 3, 1, 4], 'from the middle: common practice, no source'],
  ])('[T17] a %s of %d: %o (%s)', (shape, bolts, order) => {
    expect(tighteningOrder({ shape, bolts })).toEqual(order);
  });

  const layouts = fc.record({
    shape: fc.constantFrom(...layoutShapes),
    bolts: fc.integer({ min: 1, max: 40 }),
  });

  test('[T17] every bolt comes exactly once', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const order = tighteningOrder(layout);
        const all = Array.from({ length: layout.bolts }, (_, index) => index + 1);
        expect([...order].sort((a, b) => a - b)).toEqual(all);
      }),
    );
  });

  test('[T17] in an even ring every second bolt is the opposite of the one before', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (half) => {
        const order = tighteningOrder({ shape: 'ring', bolts: 2 * half });
        for (let place = 0; place < order.length; place += 2) {
          expect((order[place + 1] ?? 0) - (order[place] ?? 0)).toBe(half);
        }
      }),
    );
  });

  test('[T17] in an odd ring of five or more no bolt is followed by its neighbour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), (half) => {
        const bolts = 2 * half + 1;
        const order = tighteningOrder({ shape: 'ring', bolts });
        for (let place = 1; place < bolts; place += 1) {
          const step = Math.abs((order[place] ?? 0) - (order[place - 1] ?? 0));
          expect(Math.min(step, bolts - step)).toBe(half);
        }
      }),
    );
  });
});
