/** Adapters from outside. */

import { describe, expect, test } from 'vitest';
import { adapterSchema } from '../../../src/engine/torque';

describe('adapterSchema', () => {
  test('[T24] lengths and angle pass unchanged', () => {
    const crowfoot = { grip: 180, offset: 25, angle: 90 };
    expect(adapterSchema.parse(crowfoot)).toEqual(crowfoot);
  });

  test.each<[object]>([
    [{ grip: -1, offset: 25, angle: 0 }],
    [{ grip: 180, offset: -25, angle: 0 }],
    [{ grip: 180, offset: 25, angle: 400 }],
    [{ grip: 180, offset: 25 }],
  ])('[T24] %o does not pass', (adapter) => {
    expect(adapterSchema.safeParse(adapter).success).toBe(false);
  });
});
