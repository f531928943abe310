/** Whether a wrench may be used on a given day, and where a calibration tests it. */

import { compareText, ok, type Result, refuse } from '../base';
import type { Wrench, WrenchCondition } from './wrench.schema';
import { OPERATIONS_BETWEEN_CALIBRATIONS } from './wrench-classes';

/**
 * The wrench itself when it is in service and calibrated on that day (`YYYY-MM-DD`; the due day still counts). Refuses
 * one dropped, overloaded, away or retired, and one past its due date or its 5000 operations (ISO 6789-1).
 */
export function readyWrench(wrench: Wrench, on: string): Result<Wrench, WrenchNotReady> {
  const { id, condition, dueOn, operations = 0 } = wrench;
  if (condition !== 'in service') {
    return refuse<WrenchNotInService>({ code: 'wrench-not-in-service', wrench: id, condition });
  }
  const past = compareText(dueOn, on) < 0;
  if (past || operations >= OPERATIONS_BETWEEN_CALIBRATIONS) {
    const because = past ? 'date' : 'operations';
    return refuse<CalibrationOverdue>({
      code: 'calibration-overdue',
      wrench: id,
      because,
      dueOn,
      operations,
      on,
    });
  }
  return ok(wrench);
}

export type WrenchNotInService = {
  readonly code: 'wrench-not-in-service';
  readonly wrench: string;
  readonly condition: WrenchCondition;
};
export type CalibrationOverdue = {
  readonly code: 'calibration-overdue';
  readonly wrench: string;
  readonly because: 'date' | 'operations';
  readonly dueOn: string;
  readonly operations: number;
  readonly on: string;
};
export type WrenchNotReady = WrenchNotInService | CalibrationOverdue;

/** The values a calibration tests, in the wrench's own unit: its lowest, 60 % and 100 % of its highest (ISO 6789-1:2017). */
export function calibrationPoints({
  lowest,
  highest,
}: Pick<Wrench, 'lowest' | 'highest'>): readonly number[] {
  const sixty = Number((highest * 0.6).toPrecision(12));
  return [...new Set([lowest, Math.max(lowest, sixty), highest])];
}
