/** Every coarse thread of the table. */

import { describe, expect, test } from 'vitest';
import { knownThread } from '../../../src/engine/torque';
import { millimetres } from '../../../src/engine/units';

describe('knownThread', () => {
  // coarse pitches of ISO 261 and ISO 262, from memory
  test.each<[diameter: number, pitch: number]>([
    [1.6, 0.35],
    [2, 0.4],
    [2.5, 0.45],
    [3, 0.5],
    [3.5, 0.6],
    [4, 0.7],
    [5, 0.8],
    [6, 1],
    [7, 1],
    [8, 1.25],
    [9, 1.25],
    [10, 1.5],
    [12, 1.75],
    [14, 2],
    [16, 2],
    [18, 2.5],
    [20, 2.5],
    [22, 2.5],
    [24, 3],
    [27, 3],
    [30, 3.5],
    [33, 3.5],
    [36, 4],
    [39, 4],
  ])('[T20, T22] M%d × %d', (diameter, pitch) => {
    const thread = { diameter: millimetres(diameter), pitch: millimetres(pitch) };
    expect(knownThread(thread)).toEqual({ ok: true, value: thread });
    const finer = { ...thread, pitch: millimetres(pitch / 7) };
    expect(knownThread(finer).ok).toBe(false);
  });
});
