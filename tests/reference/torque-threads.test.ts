/** Thread geometry and proof loads against published tables. */

import { describe, expect, test } from 'vitest';
import { type PropertyClass, proofLoad, strengthOf, threadGeometry } from '../../src/engine/torque';
import { millimetres } from '../../src/engine/units';

const threadOf = (diameter: number, pitch: number) => ({
  diameter: millimetres(diameter),
  pitch: millimetres(pitch),
});

// ASME B1.13M bolt thread table, mm²
const stressAreas: readonly [string, number, number, number, number][] = [
  ['M3', 3, 0.5, 5.031, 0.01],
  ['M5', 5, 0.8, 14.18, 0.01],
  ['M6', 6, 1, 20.12, 0.01],
  ['M10', 10, 1.5, 57.99, 0.01],
  ['M12', 12, 1.75, 84.27, 0.01],
  ['M10x1.25', 10, 1.25, 61.2, 0.01],
  ['M12x1.25', 12, 1.25, 92.07, 0.01],
];

const diameters: readonly [string, 'd2' | 'd3', number, number, number, number, string][] = [
  ['M8', 'd2', 8, 1.25, 7.188, 0.0005, 'published thread table'],
  ['M4', 'd2', 4, 0.7, 3.545, 0.0006, 'ISO 724, from memory'],
  ['M5', 'd2', 5, 0.8, 4.48, 0.0006, 'ISO 724, from memory'],
  ['M10', 'd2', 10, 1.5, 9.026, 0.0006, 'ISO 724, from memory'],
  ['M12', 'd2', 12, 1.75, 10.863, 0.0006, 'ISO 724, from memory'],
  ['M8', 'd3', 8, 1.25, 6.466, 0.0005, 'published thread table'],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a thread diameter that happens to lie near π
  ['M4', 'd3', 4, 0.7, 3.141, 0.0006, 'published thread table'],
  ['M5', 'd3', 5, 0.8, 4.019, 0.0006, 'published thread table'],
  ['M10', 'd3', 10, 1.5, 8.16, 0.0006, 'published thread table'],
  ['M12', 'd3', 12, 1.75, 9.853, 0.0006, 'published thread table'],
];

// ISO 898-1 proof loads, N; farthest row 0.6 % away (the table rounds to three figures)
const proofLoads: readonly [string, number, number, PropertyClass, number, number][] = [
  ['M3', 3, 0.5, '8.8', 2920, 23],
  ['M3', 3, 0.5, '12.9', 4880, 39],
  ['M4', 4, 0.7, '8.8', 5100, 41],
  ['M4', 4, 0.7, '12.9', 8520, 68],
  ['M5', 5, 0.8, '8.8', 8230, 66],
  ['M5', 5, 0.8, '12.9', 13800, 110],
  ['M6', 6, 1, '8.8', 11600, 93],
  ['M6', 6, 1, '12.9', 19500, 156],
  ['M8', 8, 1.25, '8.8', 21200, 170],
  ['M8', 8, 1.25, '12.9', 35500, 284],
  ['M10', 10, 1.5, '8.8', 33700, 270],
  ['M10', 10, 1.5, '12.9', 56300, 450],
];

describe('metric threads', () => {
  test.each(stressAreas)('[T20] %s has its stress area (ASME B1.13M)', (_, d, p, area, within) => {
    expect(Math.abs(threadGeometry(threadOf(d, p)).stressArea - area)).toBeLessThanOrEqual(within);
  });

  test.each(diameters)('[T20] %s has its %s', (_, which, d, p, expected, within) => {
    const { pitchDiameter, minorDiameter } = threadGeometry(threadOf(d, p));
    const computed = which === 'd2' ? pitchDiameter : minorDiameter;
    expect(Math.abs(computed - expected)).toBeLessThanOrEqual(within);
  });

  test.each(proofLoads)(
    '[T20] %s (%d × %d) class %s bears its proof load (ISO 898-1)',
    (_, d, p, propertyClass, load, within) => {
      expect(Math.abs(proofLoad(threadOf(d, p), propertyClass) - load)).toBeLessThanOrEqual(within);
    },
  );

  test.each<[PropertyClass, yieldStress: number, proof: number, source: string]>([
    ['8.8', 640, 580, 'ISO 898-1, published tables'],
    ['10.9', 940, 830, 'ISO 898-1, published tables'],
    ['12.9', 1100, 970, 'ISO 898-1, published tables'],
    ['A2-50', 210, 210, 'ISO 3506-1, from memory'],
    ['A4-70', 450, 450, 'ISO 3506-1, from memory'],
    ['A4-80', 600, 600, 'ISO 3506-1, from memory'],
  ])('[T20] class %s yields at %d and proves at %d N/mm² (%s)', (name, yieldStress, proof) => {
    expect(strengthOf(name, 8)).toMatchObject({ yield: yieldStress, proof });
  });

  test('[T20] class 8.8 is a little stronger above M16 (ISO 898-1, from memory: M20 proves at 147 kN)', () => {
    expect(Math.abs(proofLoad(threadOf(20, 2.5), '8.8') / 147_000 - 1)).toBeLessThan(0.01);
    expect(strengthOf('8.8', 16).proof).toBe(580);
  });
});
