/** A calibration while it is being typed: test points as text, judged as far as they are there. */

import {
  type CalibrationResult,
  type CertificatePoint,
  calibrationPoints,
  calibrationResult,
  relativeDeviation,
  type TestPointsRefusal,
  type Wrench,
} from '../../engine/torque';
import { numberIn } from './number-in';

/** What the certificate gives: the true torque at each value, or the signed deviation in per cent. */
export const ways = ['true', 'deviation'] as const;
export type Way = (typeof ways)[number];

export interface DraftPoint {
  readonly at: string;
  readonly value: string;
  /** Per cent; may be left out. */
  readonly uncertainty: string;
}

export type Column = keyof DraftPoint;

/** As ISO 6789-1 proposes them, with nothing measured yet. */
export function proposedPoints(wrench: Wrench): readonly DraftPoint[] {
  return calibrationPoints(wrench).map((at) => ({
    at: String(Number(at.toFixed(3))),
    value: '',
    uncertainty: '',
  }));
}

/** The point as the certificate means it; nothing while a number is missing or none. */
export function pointIn(
  { at, value, uncertainty }: DraftPoint,
  way: Way,
): CertificatePoint | undefined {
  const tested = numberIn(at);
  const given = numberIn(value);
  const deviation = way === 'true' ? relativeDeviation(tested, given) : given / 100;
  if (!(tested > 0) || !Number.isFinite(deviation)) return undefined;
  const point = { at: tested, deviation: rounded(deviation) };
  if (uncertainty.trim() === '') return point;
  const share = numberIn(uncertainty) / 100;
  return Number.isFinite(share) ? { ...point, uncertainty: rounded(share) } : undefined;
}

/** Certificates give deviations to a hundredth of a per cent at most; what division adds says nothing. */
function rounded(fraction: number): number {
  return Number(fraction.toFixed(6));
}

export interface Judged {
  readonly points: readonly CertificatePoint[];
  /** Every point has its number. */
  readonly isComplete: boolean;
  /** Of the points that are there; nothing while there is none. */
  readonly result?: CalibrationResult | undefined;
  readonly refusal?: TestPointsRefusal | undefined;
}

export function judged(wrench: Wrench, drafts: readonly DraftPoint[], way: Way): Judged {
  const read = drafts.map((draft) => pointIn(draft, way));
  const points = read.flatMap((point) => point ?? []);
  const isComplete = points.length === drafts.length && points.length > 0;
  if (points.length === 0) return { points, isComplete };
  const result = calibrationResult(wrench, points);
  return result.ok
    ? { points, isComplete, result: result.value }
    : { points, isComplete, refusal: result.refusal };
}
