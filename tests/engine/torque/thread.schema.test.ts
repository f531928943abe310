/** Threads from outside. */

import { describe, expect, test } from 'vitest';
import { threadSchema } from '../../../src/engine/torque';

describe('threadSchema', () => {
  test('[T24] a thread has a diameter and a pitch', () => {
    expect(threadSchema.parse({ diameter: 5, pitch: 0.8 })).toEqual({ diameter: 5, pitch: 0.8 });
    expect(threadSchema.safeParse({ diameter: 5, pitch: 0 }).success).toBe(false);
    expect(threadSchema.safeParse({ diameter: 5 }).success).toBe(false);
  });
});
