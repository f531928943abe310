/** Rounds over the bolts: rising passes and a last round after ASME PCC-1, from memory. */

import { describe, expect, test } from 'vitest';
import { type Layout, tighteningPasses } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';

const faceplate = { min: newtonMetres(4), max: newtonMetres(6) };

const kindsOf = (layout: Layout) => tighteningPasses(faceplate, layout).map(({ kind }) => kind);

describe('tighteningPasses', () => {
  test('[T18] four faceplate bolts take three passes, the last one once round', () => {
    expect(tighteningPasses(faceplate, { shape: 'rectangle', bolts: 4 })).toEqual([
      { pass: 1, of: 3, kind: 'rising', fraction: 0.5, about: 2.5, order: [1, 3, 2, 4] },
      { pass: 2, of: 3, kind: 'full', fraction: 1, order: [1, 3, 2, 4] },
      { pass: 3, of: 3, kind: 'last round', fraction: 1, order: [1, 2, 3, 4] },
    ]);
  });

  test('[T18] one bolt takes one pass', () => {
    expect(tighteningPasses(faceplate, { shape: 'line', bolts: 1 })).toEqual([
      { pass: 1, of: 1, kind: 'full', fraction: 1, order: [1] },
    ]);
  });

  test.each<[shape: Layout['shape'], bolts: number, kinds: readonly string[]]>([
    ['pair', 2, ['rising', 'full']],
    ['line', 2, ['rising', 'full']],
    ['line', 3, ['rising', 'full', 'last round']],
    ['ring', 5, ['rising', 'full', 'last round']],
    ['ring', 6, ['rising', 'full', 'last round']],
    ['ring', 12, ['rising', 'full', 'last round']],
    ['opposed', 2, ['full', 'last round']],
    ['opposed', 1, ['full']],
  ])('[T18] a %s of %d', (shape, bolts, kinds) => {
    expect(kindsOf({ shape, bolts })).toEqual(kinds);
  });

  test('[T18] a line keeps its order in the last round', () => {
    const orders = tighteningPasses(faceplate, { shape: 'line', bolts: 3 }).map((one) => one.order);
    expect(orders).toEqual([
      [2, 1, 3],
      [2, 1, 3],
      [2, 1, 3],
    ]);
  });

  test.each<[figure: object, about: number | undefined]>([
    [{ max: newtonMetres(5) }, 2.5],
    [{ min: newtonMetres(8) }, 4],
    [{ target: newtonMetres(7) }, 3.5],
    [{}, undefined],
    [{ min: newtonMetres(6), max: newtonMetres(4) }, undefined],
  ])(
    '[T18] the guide for the first pass is half of what the figure asks for: %o',
    (figure, about) => {
      const [first] = tighteningPasses(figure, { shape: 'pair', bolts: 2 });
      expect(first?.about).toBe(about);
    },
  );

  test('[T18] passes never fall', () => {
    for (let bolts = 1; bolts <= 12; bolts += 1) {
      const fractions = tighteningPasses(faceplate, { shape: 'ring', bolts }).map(
        (one) => one.fraction,
      );
      expect(fractions).toEqual([...fractions].sort((a, b) => a - b));
      expect(fractions.at(-1)).toBe(1);
    }
  });
});
