/** Adapters that cannot work; the factor's values are checked in tests/reference. */

import { describe, expect, test } from 'vitest';
import { adapterFactor, type WrenchClass, type WrenchType } from '../../../src/engine/torque';
import { millimetres } from '../../../src/engine/units';

const clickWrench = { type: 'II', class: 'A' } as const;

const adapter = (grip: number, offset: number, angle: number) => ({
  grip: millimetres(grip),
  offset: millimetres(offset),
  angle,
});

describe('adapterFactor', () => {
  test('[T7] turned either way, an angle counts the same', () => {
    expect(adapterFactor(adapter(180, 25, 40), clickWrench)).toEqual(
      adapterFactor(adapter(180, 25, -40), clickWrench),
    );
  });

  test.each<[grip: number, offset: number, angle: number, because: string]>([
    [0, 25, 0, 'lengths'],
    [-180, 25, 0, 'lengths'],
    [180, -25, 0, 'lengths'],
    [180, 180, 180, 'reaches-the-hand'],
    [180, 200, 180, 'reaches-the-hand'],
  ])('[T7] grip %d, offset %d at %d° is refused: %s', (grip, offset, angle, because) => {
    expect(adapterFactor(adapter(grip, offset, angle), clickWrench)).toEqual({
      ok: false,
      refusal: { code: 'adapter-impossible', because },
    });
  });

  test('[T7] an angle that is no number is refused', () => {
    expect(adapterFactor({ ...adapter(180, 25, 0), angle: Number.NaN }, clickWrench).ok).toBe(
      false,
    );
  });

  test.each<[WrenchType, WrenchClass]>([
    ['II', 'D'],
    ['II', 'E'],
    ['II', 'F'],
    ['I', 'D'],
    ['I', 'E'],
  ])('[T7] a screwdriver, type %s class %s, has no lever to lengthen', (type, letter) => {
    const screwdriver = { type, class: letter };
    expect(adapterFactor(adapter(100, 25, 0), screwdriver)).toEqual({
      ok: false,
      refusal: { code: 'adapter-impossible', because: 'screwdriver' },
    });
    expect(adapterFactor(adapter(100, 0, 0), screwdriver)).toEqual({ ok: true, value: 1 });
  });
});
