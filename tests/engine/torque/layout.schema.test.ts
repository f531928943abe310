/** Layouts from outside. */

import { describe, expect, test } from 'vitest';
import { layoutSchema, layoutShapes } from '../../../src/engine/torque';

describe('layoutSchema', () => {
  test.each(layoutShapes.map((shape) => [shape]))(
    '[T24] a %s of bolts passes unchanged',
    (shape) => {
      expect(layoutSchema.parse({ shape, bolts: 4 })).toEqual({ shape, bolts: 4 });
    },
  );

  test.each<[object]>([
    [{ shape: 'heap', bolts: 4 }],
    [{ shape: 'ring', bolts: 0 }],
    [{ shape: 'ring', bolts: 2.5 }],
  ])('[T24] %o does not pass', (layout) => {
    expect(layoutSchema.safeParse(layout).success).toBe(false);
  });
});
