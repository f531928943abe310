/** Test points that lie just where they are still taken. */

import { describe, expect, test } from 'vitest';
import { calibrationResult } from '../../../src/engine/torque';
import { wrench } from '../../support/wrenches';

describe('calibrationResult', () => {
  const large = wrench({ lowest: 20, highest: 100, increment: 1 });

  // the room of 5 % round the ends is common practice, no source
  test.each<[at: number, isTaken: boolean]>([
    [18.9, false],
    [19, true],
    [105, true],
    [105.1, false],
  ])('[T26] a point at %d N·m on a scale of 20 to 100: taken %s', (at, isTaken) => {
    expect(calibrationResult(large, [{ at, deviation: 0 }]).ok).toBe(isTaken);
  });

  test.each<[deviation: number, uncertainty: number, because: string | undefined]>([
    [0.5, 0, undefined],
    [-0.5, 0, undefined],
    [0.501, 0, 'deviation'],
    [-0.501, 0, 'deviation'],
    [0, 0.5, undefined],
    [0, 0.501, 'uncertainty'],
    [0, -0.001, 'uncertainty'],
  ])('[T26] out by %d ± %d: %s', (deviation, uncertainty, because) => {
    const result = calibrationResult(large, [{ at: 60, deviation, uncertainty }]);
    expect(result.ok ? undefined : result.refusal).toEqual(
      because && { code: 'test-point-impossible', wrench: large.id, at: 60, because },
    );
  });
});
