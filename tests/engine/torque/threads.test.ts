/** Threads in the table and out of it; geometry is checked in tests/reference. */

import { describe, expect, test } from 'vitest';
import { knownThread } from '../../../src/engine/torque';
import { millimetres } from '../../../src/engine/units';

const threadOf = (diameter: number, pitch: number) => ({
  diameter: millimetres(diameter),
  pitch: millimetres(pitch),
});

describe('knownThread', () => {
  // ISO 261, from memory
  test.each<[diameter: number, pitch: number]>([
    [3, 0.5],
    [4, 0.7],
    [5, 0.8],
    [6, 1],
    [8, 1.25],
    [8, 1],
    [8, 0.75],
    [10, 1.5],
    [10, 1],
    [12, 1.75],
    [15, 1.5],
  ])('[T22] M%d × %d is in the table', (diameter, pitch) => {
    const thread = threadOf(diameter, pitch);
    expect(knownThread(thread)).toEqual({ ok: true, value: thread });
  });

  // 9/16 in × 20 pedal thread, 1.37 in × 24 bottom bracket, and a pitch M5 does not have
  test.each<[diameter: number, pitch: number]>([
    [14.2875, 1.27],
    [34.798, 1.0583],
    [5, 1],
  ])('[T22] %d × %d is not', (diameter, pitch) => {
    expect(knownThread(threadOf(diameter, pitch))).toEqual({
      ok: false,
      refusal: { code: 'thread-not-in-table', diameter, pitch },
    });
  });
});
