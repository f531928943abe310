/** Proof and tensile loads of every steel class, coarse and fine, and the strengths behind stainless ones, against ISO tables. */

import { describe, expect, test } from 'vitest';
import {
  knownThread,
  type PropertyClass,
  proofLoad,
  strengthOf,
  tensileLoad,
  threadGeometry,
} from '../../src/engine/torque';
import { millimetres } from '../../src/engine/units';

const threadOf = (diameter: number, pitch: number) => ({
  diameter: millimetres(diameter),
  pitch: millimetres(pitch),
});

const away = (computed: number, printed: number) => Math.abs(computed / printed - 1);

const classes = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const;

/** Diameter and pitch in mm, then a load in N for each class above; 0 where the standard has none. */
type Row = readonly [diameter: number, pitch: number, ...loads: readonly number[]];

// ISO 898-1, proof loads, coarse thread: 8.8 and 12.9 of M3 to M10 published, the rest from memory
const coarse: readonly Row[] = [
  [3, 0.5, 1130, 1560, 1410, 1910, 2210, 2920, 3270, 4180, 4880],
  [3.5, 0.6, 1530, 2100, 1900, 2580, 2980, 3940, 4410, 5630, 6580],
  [4, 0.7, 1980, 2720, 2460, 3340, 3860, 5100, 5710, 7290, 8520],
  [5, 0.8, 3200, 4400, 3980, 5400, 6250, 8230, 9230, 11_800, 13_800],
  [6, 1, 4520, 6230, 5630, 7640, 8840, 11_600, 13_100, 16_700, 19_500],
  [7, 1, 6500, 8960, 8090, 11_000, 12_700, 16_800, 18_800, 24_000, 28_000],
  [8, 1.25, 8240, 11_400, 10_200, 13_900, 16_100, 21_200, 23_800, 30_400, 35_500],
  [10, 1.5, 13_000, 18_000, 16_200, 22_000, 25_500, 33_700, 37_700, 48_100, 56_300],
  [12, 1.75, 19_000, 26_100, 23_600, 32_000, 37_100, 48_900, 54_800, 70_000, 81_800],
  [14, 2, 25_900, 35_600, 32_200, 43_700, 50_600, 66_700, 74_800, 95_500, 112_000],
  [16, 2, 35_300, 48_700, 44_000, 59_700, 69_100, 91_000, 102_000, 130_000, 152_000],
  [18, 2.5, 43_200, 59_500, 53_800, 73_000, 84_500, 115_000, 0, 159_000, 186_000],
  [20, 2.5, 55_100, 76_000, 68_600, 93_100, 108_000, 147_000, 0, 203_000, 238_000],
  [22, 2.5, 68_200, 93_900, 84_800, 115_000, 133_000, 182_000, 0, 252_000, 294_000],
  [24, 3, 79_400, 109_000, 98_800, 134_000, 155_000, 212_000, 0, 293_000, 342_000],
];

// ISO 898-1, proof loads, fine thread, from memory
const fine: readonly Row[] = [
  [8, 1, 8820, 12_200, 11_000, 14_900, 17_200, 22_700, 25_500, 32_500, 38_000],
  [10, 1.25, 13_800, 19_000, 17_100, 23_300, 26_900, 35_500, 39_800, 50_800, 59_400],
  [10, 1, 14_500, 20_000, 18_100, 24_500, 28_400, 37_400, 41_900, 53_500, 62_700],
  [12, 1.5, 19_800, 27_300, 24_700, 33_500, 38_800, 51_100, 57_300, 73_100, 85_500],
  [12, 1.25, 20_700, 28_600, 25_800, 35_000, 40_500, 53_400, 59_900, 76_400, 89_300],
  [14, 1.5, 28_100, 38_800, 35_000, 47_500, 55_000, 72_500, 81_200, 104_000, 121_000],
  [16, 1.5, 37_600, 51_800, 46_800, 63_500, 73_500, 96_900, 109_000, 139_000, 162_000],
];

// ISO 898-1, nominal stress areas, mm², from memory; the standard prints three figures
const areas: readonly (readonly [diameter: number, pitch: number, area: number])[] = [
  [3, 0.5, 5.03],
  [3.5, 0.6, 6.78],
  [4, 0.7, 8.78],
  [5, 0.8, 14.2],
  [6, 1, 20.1],
  [7, 1, 28.9],
  [8, 1.25, 36.6],
  [10, 1.5, 58],
  [12, 1.75, 84.3],
  [14, 2, 115],
  [16, 2, 157],
  [18, 2.5, 192],
  [20, 2.5, 245],
  [22, 2.5, 303],
  [24, 3, 353],
  [27, 3, 459],
  [30, 3.5, 561],
  [33, 3.5, 694],
  [36, 4, 817],
  [39, 4, 976],
  [8, 1, 39.2],
  [10, 1.25, 61.2],
  [10, 1, 64.5],
  [12, 1.5, 88.1],
  [12, 1.25, 92.1],
  [14, 1.5, 125],
  [16, 1.5, 167],
  [18, 1.5, 216],
  [20, 1.5, 272],
  [22, 1.5, 333],
  [24, 2, 384],
  [27, 2, 496],
  [30, 2, 621],
  [33, 2, 761],
  [36, 3, 865],
  [39, 3, 1030],
];

describe('stress areas', () => {
  test.each(areas)('[T20, T22] M%d × %d: %d mm²', (diameter, pitch, area) => {
    const thread = threadOf(diameter, pitch);
    expect(knownThread(thread).ok).toBe(true);
    expect(away(threadGeometry(thread).stressArea, area)).toBeLessThan(0.004);
  });
});

describe('proof loads', () => {
  test.each([...coarse, ...fine])('[T20] M%d × %d in every class', (diameter, pitch, ...loads) => {
    for (const [index, load] of loads.entries()) {
      const name = classes[index];
      if (name === undefined || load === 0) continue;
      expect(away(proofLoad(threadOf(diameter, pitch), name), load)).toBeLessThan(0.008);
    }
  });

  test('[T20] the formula is at most 0.7 % from either table, which rounds the area first', () => {
    for (const table of [coarse, fine]) {
      const farthest = table.flatMap(([diameter, pitch, ...loads]) =>
        loads.flatMap((load, index) => {
          const name = classes[index];
          return name === undefined || load === 0
            ? []
            : [away(proofLoad(threadOf(diameter, pitch), name), load)];
        }),
      );
      expect(Math.max(...farthest)).toBeLessThan(0.007);
    }
  });
});

describe('tensile loads', () => {
  // ISO 898-1 minimum ultimate tensile loads, published; farthest row 0.3 % away
  test.each<[string, number, number, PropertyClass, load: number, within: number]>([
    ['M5', 5, 0.8, '8.8', 11_350, 91],
    ['M5', 5, 0.8, '12.9', 17_300, 138],
    ['M6', 6, 1, '8.8', 16_100, 129],
    ['M6', 6, 1, '12.9', 24_500, 196],
    ['M8', 8, 1.25, '8.8', 29_200, 234],
    ['M8', 8, 1.25, '12.9', 44_600, 357],
  ])('[T20] %s (%d × %d) class %s: %d N (±%d)', (_, diameter, pitch, name, load, within) => {
    const computed = tensileLoad(threadOf(diameter, pitch), name);
    expect(Math.abs(computed - load)).toBeLessThanOrEqual(within);
  });

  // ISO 3506-1, from memory: R_m and R_p0.2
  test.each<[PropertyClass, tensile: number, yieldStress: number]>([
    ['A1-50', 500, 210],
    ['A1-70', 700, 450],
    ['A1-80', 800, 600],
    ['A2-50', 500, 210],
    ['A2-70', 700, 450],
    ['A2-80', 800, 600],
    ['A4-50', 500, 210],
    ['A4-70', 700, 450],
    ['A4-80', 800, 600],
    ['A4-100', 1000, 800],
  ])('[T20] %s: R_m %d, R_p0.2 %d N/mm²', (name, tensile, yieldStress) => {
    expect(strengthOf(name, 8)).toEqual({
      material: 'stainless',
      tensile,
      yield: yieldStress,
      proof: yieldStress,
    });
  });

  // ISO 898-1, table 3, from memory: R_m, R_eL or R_pf, S_p
  test.each<[PropertyClass, diameter: number, tensile: number, yieldStress: number, proof: number]>(
    [
      ['4.6', 8, 400, 240, 225],
      ['4.8', 8, 420, 340, 310],
      ['5.6', 8, 500, 300, 280],
      ['5.8', 8, 520, 420, 380],
      ['6.8', 8, 600, 480, 440],
      ['8.8', 16, 800, 640, 580],
      ['8.8', 18, 830, 660, 600],
      ['9.8', 8, 900, 720, 650],
      ['10.9', 8, 1040, 940, 830],
      ['12.9', 8, 1220, 1100, 970],
    ],
  )('[T20] %s at M%d: %d, %d and %d N/mm²', (name, diameter, tensile, yieldStress, proof) => {
    expect(strengthOf(name, diameter)).toEqual({
      material: 'steel',
      tensile,
      yield: yieldStress,
      proof,
    });
  });
});
