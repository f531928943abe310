/** A calibration is entered: judged by the wrench's class, kept beside those before it, and the wrench goes on or does not. */

import { compareText, ok, type Result, refuse } from '../engine/base';
import { calibrationResult, type TestPointsRefusal, type Wrench } from '../engine/torque';
import type { CertificatePoint, Person, Tool, ToolNote } from '../storage/contract';
import { operationsCounted, withCountedOperations } from './counted-operations';
import { attempted } from './storage-refusals';
import {
  changedWrench,
  type DayNotYet,
  noted,
  type ToolPorts,
  type ToolReasonMissing,
  type ToolRefusal,
} from './tool-changes';
import type { WrenchTool } from './tool-doubts';

export interface Calibration {
  readonly wrench: string;
  /** ISO dates: when it was done, and when the next is due. */
  readonly on: string;
  readonly dueOn: string;
  readonly reference?: string | undefined;
  /** As it came; empty when the certificate gives no values. */
  readonly found: readonly CertificatePoint[];
  /** What was done to it, and the points it left with. */
  readonly adjusted?:
    | { readonly how: string; readonly points: readonly CertificatePoint[] }
    | undefined;
  /** Where it goes when it is not put right. */
  readonly outOfService?: 'away' | 'retired' | undefined;
}

export type CalibrationDaysWrong = {
  readonly code: 'calibration-days-wrong';
  /** The calibration before, which this one cannot come before. */
  readonly since: string;
};
export type FoundOutside = { readonly code: 'wrench-found-outside'; readonly wrench: string };
export type LeftOutside = { readonly code: 'wrench-left-outside'; readonly wrench: string };
export type CalibrationRefusal =
  | ToolRefusal
  | ToolReasonMissing
  | DayNotYet
  | CalibrationDaysWrong
  | TestPointsRefusal
  | FoundOutside
  | LeftOutside;

type Verdict = Omit<Extract<ToolNote, { kind: 'calibrated' }>, 'by' | 'at' | 'operations'>;

/**
 * Found outside, a wrench goes back into service only adjusted and with new points inside; otherwise it says where it
 * goes, and stays as uncalibrated as it was.
 */
export async function calibrate(
  { storage, clock }: ToolPorts,
  calibration: Calibration,
  person: Person,
): Promise<Result<true, CalibrationRefusal>> {
  const { wrench: id, on } = calibration;
  const today = clock.today();
  const rows = await attempted(async () => {
    const held = await storage.tools.get(id);
    return held?.kind === 'wrench'
      ? storage.findByWrench(id, { since: held.wrench.calibratedOn })
      : [];
  });
  if (!rows.ok) return rows;
  return changedWrench(storage, id, (held): Result<Tool, CalibrationRefusal> => {
    const judged = judge(held, calibration, today);
    if (!judged.ok) return judged;
    const [now] = withCountedOperations([held], rows.value);
    const operations = now?.kind === 'wrench' ? (now.wrench.operations ?? 0) : 0;
    const note = { ...judged.value, operations, by: person.id, at: clock.now() };
    if (!judged.value.isGood) {
      const condition = calibration.outOfService ?? held.wrench.condition;
      return ok(noted({ ...held, wrench: { ...held.wrench, condition } }, note));
    }
    // Of its own day only what comes after it counts; a day that has gone by counts as a whole.
    const countedBefore = on === today ? operationsCounted(rows.value, id, on).onTheDay : 0;
    return ok(
      noted({ ...held, wrench: calibrated(held.wrench, calibration), countedBefore }, note),
    );
  });
}

function judge(
  { wrench }: WrenchTool,
  { on, dueOn, reference, found, adjusted, outOfService }: Calibration,
  today: string,
): Result<Verdict, CalibrationRefusal> {
  if (compareText(on, today) > 0) return refuse({ code: 'day-not-yet', on });
  const since = wrench.calibratedOn;
  if (compareText(on, since) < 0 || compareText(dueOn, on) <= 0)
    return refuse({ code: 'calibration-days-wrong', since });
  const asFound = found.length === 0 ? undefined : calibrationResult(wrench, found);
  if (asFound?.ok === false) return asFound;
  const foundOutside = asFound !== undefined && !asFound.value.within;
  const asLeft = adjusted && calibrationResult(wrench, adjusted.points);
  if (asLeft?.ok === false) return asLeft;
  if (adjusted?.how.trim() === '') return refuse({ code: 'reason-missing' });
  const isGood = outOfService === undefined;
  if (isGood && foundOutside && asLeft === undefined)
    return refuse({ code: 'wrench-found-outside', wrench: wrench.id });
  if (isGood && asLeft !== undefined && !asLeft.value.within)
    return refuse({ code: 'wrench-left-outside', wrench: wrench.id });
  return ok({
    kind: 'calibrated',
    on,
    dueOn,
    since,
    ...(reference !== undefined && { reference }),
    found,
    foundOutside,
    ...(adjusted && { adjusted: { ...adjusted, how: adjusted.how.trim() } }),
    isGood,
  });
}

/** Counted from nought, and planned with the points it left with; without any its class holds again. */
function calibrated(
  { certificate: _, ...before }: Wrench,
  { on, dueOn, reference, found, adjusted }: Calibration,
): Wrench {
  const points = adjusted?.points ?? found;
  return {
    ...before,
    calibratedOn: on,
    dueOn,
    condition: 'in service',
    operations: 0,
    ...(points.length > 0 && {
      certificate: { ...(reference !== undefined && { reference }), points: [...points] },
    }),
  };
}
