/** Metric threads the estimates are made for, and their geometry. */

import { ok, type Result, refuse } from '../base';
import { type Millimetres, millimetres } from '../units';
import type { Thread } from './thread.schema';

/** Pitches by nominal diameter, coarse first, mm (a selection of ISO 261, from memory). */
const pitchesByDiameter: Readonly<Record<number, readonly number[]>> = {
  1.6: [0.35],
  2: [0.4],
  2.5: [0.45],
  3: [0.5, 0.35],
  3.5: [0.6, 0.35],
  4: [0.7, 0.5],
  5: [0.8, 0.5],
  6: [1, 0.75],
  7: [1, 0.75],
  8: [1.25, 1, 0.75],
  9: [1.25, 1, 0.75],
  10: [1.5, 1.25, 1, 0.75],
  12: [1.75, 1.5, 1.25, 1],
  14: [2, 1.5, 1.25, 1],
  15: [1.5, 1],
  16: [2, 1.5, 1],
  18: [2.5, 2, 1.5, 1],
  20: [2.5, 2, 1.5, 1],
  22: [2.5, 2, 1.5, 1],
  24: [3, 2, 1.5, 1],
  27: [3, 2, 1.5, 1],
  30: [3.5, 3, 2, 1.5, 1],
  33: [3.5, 3, 2, 1.5],
  36: [4, 3, 2, 1.5],
  39: [4, 3, 2, 1.5],
};

/** The thread itself when it is in the table; refuses any other, for which nothing is computed. */
export function knownThread(thread: Thread): Result<Thread, ThreadNotInTable> {
  const pitches = pitchesByDiameter[thread.diameter] ?? [];
  if (pitches.includes(thread.pitch)) return ok(thread);
  return refuse<ThreadNotInTable>({ code: 'thread-not-in-table', ...thread });
}

export type ThreadNotInTable = {
  readonly code: 'thread-not-in-table';
  readonly diameter: Millimetres;
  readonly pitch: Millimetres;
};

export type ThreadGeometry = {
  /** d₂, mm. */
  readonly pitchDiameter: Millimetres;
  /** d₃, mm. */
  readonly minorDiameter: Millimetres;
  /** Diameter of the circle that bears the tension, mm. */
  readonly stressDiameter: Millimetres;
  /** A_s, mm². */
  readonly stressArea: number;
};

/** d₂ = d − 0.649 519 P and d₃ = d − 1.226 869 P (ISO 724); A_s = π/4·((d₂ + d₃)/2)² (ISO 898-1). */
export function threadGeometry({ diameter, pitch }: Thread): ThreadGeometry {
  const pitchDiameter = diameter - 0.649519 * pitch;
  const minorDiameter = diameter - 1.226869 * pitch;
  const stressDiameter = (pitchDiameter + minorDiameter) / 2;
  return {
    pitchDiameter: millimetres(pitchDiameter),
    minorDiameter: millimetres(minorDiameter),
    stressDiameter: millimetres(stressDiameter),
    stressArea: (Math.PI / 4) * stressDiameter ** 2,
  };
}
