/** How rough a bolt's surfaces are, dry and greased, and the bearing surface of an ordinary socket head. */

import { type Millimetres, millimetres } from '../units';

export type FrictionRange = { readonly low: number; readonly high: number };

/**
 * Ranges of the coefficient of friction. Steel: classes C (dry) and B (greased) of VDI 2230 table A5; stainless: D (dry) and
 * C (greased). All from memory; the class of a real joint is only known by testing it.
 */
export const frictionByMaterial: Readonly<
  Record<'steel' | 'stainless', { readonly dry: FrictionRange; readonly greased: FrictionRange }>
> = {
  steel: { dry: { low: 0.14, high: 0.24 }, greased: { low: 0.08, high: 0.16 } },
  stainless: { dry: { low: 0.2, high: 0.35 }, greased: { low: 0.14, high: 0.24 } },
};

export type Bearing = { readonly headDiameter: Millimetres; readonly holeDiameter: Millimetres };

/** By nominal diameter: d_w of a socket cap screw (ISO 4762) on a medium clearance hole (ISO 273), mm, from memory. */
const socketHeads: Readonly<Record<number, readonly [head: number, hole: number]>> = {
  2: [3.48, 2.4],
  2.5: [4.18, 2.9],
  3: [5.07, 3.4],
  4: [6.53, 4.5],
  5: [8.03, 5.5],
  6: [9.38, 6.6],
  8: [12.33, 9],
  10: [15.33, 11],
  12: [17.23, 13.5],
  14: [20.17, 15.5],
  16: [23.17, 17.5],
  20: [28.87, 22],
  24: [34.81, 26],
};

export function socketHeadBearing(diameter: number): Bearing | undefined {
  const row = socketHeads[diameter];
  return row && { headDiameter: millimetres(row[0]), holeDiameter: millimetres(row[1]) };
}
