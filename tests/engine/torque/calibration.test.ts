/** Days, operations and mishaps. */

import { describe, expect, test } from 'vitest';
import { calibrationPoints, readyWrench, wrenchConditions } from '../../../src/engine/torque';
import { TODAY, wrench } from '../../support/wrenches';

describe('readyWrench', () => {
  test('[T6] a wrench in service and in time is ready', () => {
    expect(readyWrench(wrench(), TODAY)).toEqual({ ok: true, value: wrench() });
  });

  test.each<[dueOn: string, ready: boolean]>([
    ['2026-03-01', false],
    ['2026-03-02', true],
    ['2026-03-03', true],
    ['2025-12-31', false],
  ])('[T6] due on %s, asked on 2026-03-02: ready is %s', (dueOn, ready) => {
    const answer = readyWrench(wrench({ dueOn }), TODAY);
    expect(answer.ok).toBe(ready);
    if (answer.ok) return;
    expect(answer.refusal).toEqual({
      code: 'calibration-overdue',
      wrench: 'wrench',
      because: 'date',
      dueOn,
      operations: 0,
      on: TODAY,
    });
  });

  // ISO 6789-1: 5000 operations or 12 months, whichever comes first
  test.each<[operations: number, ready: boolean]>([
    [0, true],
    [4999, true],
    [5000, false],
  ])('[T6] after %d operations: ready is %s', (operations, ready) => {
    const answer = readyWrench(wrench({ operations }), TODAY);
    expect(answer.ok).toBe(ready);
    if (!answer.ok) expect(answer.refusal).toMatchObject({ because: 'operations', operations });
  });

  test.each(wrenchConditions.filter((condition) => condition !== 'in service').map((one) => [one]))(
    '[T6] a wrench that is “%s” is not used',
    (condition) => {
      expect(readyWrench(wrench({ condition, dueOn: '2020-01-01' }), TODAY)).toEqual({
        ok: false,
        refusal: { code: 'wrench-not-in-service', wrench: 'wrench', condition },
      });
    },
  );
});

describe('calibrationPoints', () => {
  // ISO 6789-1:2017: lowest marked value, 60 % and 100 % of the maximum
  test.each<[lowest: number, highest: number, points: readonly number[]]>([
    [2, 25, [2, 15, 25]],
    [20, 200, [20, 120, 200]],
    [1, 6, [1, 3.6, 6]],
    [5, 5, [5]],
    [5, 6, [5, 6]],
  ])('[T4] a scale %d–%d is tested at its points', (lowest, highest, points) => {
    expect(calibrationPoints({ lowest, highest })).toEqual(points);
  });
});
