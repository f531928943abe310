/** What a calibration found at each test point, and whether the wrench keeps to its class. */

import { ok, type Result, refuse } from '../base';
import { calibrationPoints } from './calibration';
import { classDeviation } from './class-deviation';
import type { CertificatePoint, Wrench } from './wrench.schema';

export type CalibrationResult = {
  /** Every point keeps to what the class allows. */
  readonly within: boolean;
  /** What the class allows, as a fraction. */
  readonly permissible: number;
  /** In the order of the scale. */
  readonly points: readonly (CertificatePoint & { readonly within: boolean })[];
  /** Values that a calibration tests and this one did not, in the wrench's own unit. */
  readonly untested: readonly number[];
};

/**
 * Judges test points (in the wrench's own unit, deviations signed) by the class of the wrench: within when the deviation
 * itself is at most the permissible one, which still counts (ISO 6789-1:2017). The laboratory's uncertainty moves no verdict
 * here; it widens every joint planned or judged afterwards. Refuses points that cannot be, naming the first.
 */
export function calibrationResult(
  wrench: Wrench,
  points: readonly CertificatePoint[],
): Result<CalibrationResult, TestPointsRefusal> {
  const sound = testPointsOf(wrench, points);
  if (!sound.ok) return sound;
  const permissible = classDeviation(wrench);
  const judged = [...sound.value]
    .sort((a, b) => a.at - b.at)
    .map((point) => ({ ...point, within: Math.abs(point.deviation) <= permissible + DUST }));
  const isTested = (value: number) => judged.some(({ at }) => Math.abs(at / value - 1) <= NEAR);
  return ok({
    within: judged.every(({ within }) => within),
    permissible,
    points: judged,
    untested: calibrationPoints(wrench).filter((value) => !isTested(value)),
  });
}

export type TestPointsMissing = { readonly code: 'test-points-missing'; readonly wrench: string };
export type TestPointImpossible = {
  readonly code: 'test-point-impossible';
  readonly wrench: string;
  readonly at: number;
  readonly because: 'beyond-scale' | 'deviation' | 'uncertainty';
};
export type TestPointsRefusal = TestPointsMissing | TestPointImpossible;

/** The points themselves when each lies on the scale and no number is beyond what a torque tool can be out by. */
export function testPointsOf(
  wrench: Wrench,
  points: readonly CertificatePoint[],
): Result<readonly CertificatePoint[], TestPointsRefusal> {
  const { id } = wrench;
  if (points.length === 0) {
    return refuse<TestPointsMissing>({ code: 'test-points-missing', wrench: id });
  }
  for (const point of points) {
    const because = whatIsWrong(point, wrench);
    if (because !== undefined) {
      const { at } = point;
      return refuse<TestPointImpossible>({
        code: 'test-point-impossible',
        wrench: id,
        at,
        because,
      });
    }
  }
  return ok(points);
}

function whatIsWrong(
  { at, deviation, uncertainty = 0 }: CertificatePoint,
  { lowest, highest }: Wrench,
): TestPointImpossible['because'] | undefined {
  if (!(at >= lowest * (1 - NEAR) && at <= highest * (1 + NEAR))) return 'beyond-scale';
  if (!(Math.abs(deviation) <= HALF)) return 'deviation';
  return uncertainty >= 0 && uncertainty <= HALF ? undefined : 'uncertainty';
}

/** A tool further out than by half is no torque tool. */
const HALF = 0.5;

/** A point tested this close to a value tests it; laboratories load in their own steps. Common practice, no source. */
const NEAR = 0.05;

const DUST = 1e-9;
