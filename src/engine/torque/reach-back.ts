/** A wrench found out of tolerance, dropped or overloaded: which joints tightened with it may be outside their figure. */

import { compareNumbers, compareText, ok, type Result, refuse } from '../base';
import type { NewtonMetres } from '../units';
import type { Adapter } from './adapter.schema';
import { type TestPointsRefusal, testPointsOf } from './calibration-result';
import type { Figure } from './figure.schema';
import { type ReadingVerdict, weigh } from './reading';
import type { CertificatePoint, Wrench } from './wrench.schema';

/** How a joint stands once more is known of the wrench; without numbers where nothing is known. */
export type JudgedAgain = {
  readonly verdict: ReadingVerdict;
  /** N·m at the fastener: where it may have ended. */
  readonly low?: number;
  readonly high?: number;
  /** 0 to 1, by the distribution named at `riskOutside`. */
  readonly probabilityOutside?: number;
};

type Tightened = {
  readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
  /** N·m at the wrench. */
  readonly setPoint: NewtonMetres;
  readonly adapter?: Adapter | undefined;
};

/**
 * Judges a click at `setPoint` again with what a calibration has `found` (test points in the wrench's own unit, signed
 * deviations (indicated − true) / true, straight between the points and held beyond them), as a reading is judged (guard
 * band of ISO 14253-1). Nothing is known of a wrench that was dropped or overloaded and not yet measured: undecided, as is a
 * figure or an adapter that makes no sense. ISO/IEC 17025:2017, 7.10 asks that earlier results be looked at again.
 */
export function judgeAgain(
  asked: Tightened & {
    readonly wrench: Wrench;
    readonly found: readonly CertificatePoint[] | undefined;
  },
): JudgedAgain {
  const { figure, wrench, setPoint, adapter, found } = asked;
  if (found === undefined || found.length === 0) return { verdict: 'undecided' };
  const measured: Wrench = { ...wrench, certificate: { points: [...found] } };
  const weighed = weigh({ figure, wrench: measured, reading: setPoint, adapter });
  if (weighed === undefined) return { verdict: 'undecided' };
  const { verdict, low, high, probabilityInside } = weighed;
  return { verdict, low, high, probabilityOutside: 1 - probabilityInside };
}

/** One joint tightened with the wrench. */
export type WrenchUse = Tightened & {
  readonly job: string;
  readonly frameNumber: string;
  readonly handedOver: boolean;
  readonly joint: string;
  /** What happens when it fails: A hurts the rider, B stops the bike working, C the rest. */
  readonly class: 'A' | 'B' | 'C';
  /** The day it was tightened, `YYYY-MM-DD`. */
  readonly on: string;
};

export type ReachedJoint<Use extends WrenchUse = WrenchUse> = Use & JudgedAgain;

/**
 * The joints tightened from `since` to `until` (both days included; open when left out) that may be outside their figure:
 * those of bikes handed over first, then by class of joint, then the likeliest to be outside (what is not known counts as
 * surely), then by job and joint. Refuses test points that cannot be, and a period that ends before it begins.
 */
export function reachBack<Use extends WrenchUse>(asked: {
  readonly wrench: Wrench;
  readonly found?: readonly CertificatePoint[] | undefined;
  readonly since: string;
  readonly until?: string | undefined;
  readonly uses: readonly Use[];
}): Result<readonly ReachedJoint<Use>[], ReachBackRefusal> {
  const { wrench, found, since, until, uses } = asked;
  if (until !== undefined && compareText(until, since) < 0) {
    return refuse<PeriodBackwards>({ code: 'period-backwards', since, until });
  }
  const points = found === undefined ? ok(undefined) : testPointsOf(wrench, found);
  if (!points.ok) return points;
  return ok(
    uses
      .filter(({ on }) => on >= since && (until === undefined || on <= until))
      .map((use) => ({ ...use, ...judgeAgain({ ...use, wrench, found: points.value }) }))
      .filter(({ verdict }) => verdict !== 'inside')
      .sort(byUrgency),
  );
}

export type PeriodBackwards = {
  readonly code: 'period-backwards';
  readonly since: string;
  readonly until: string;
};
export type ReachBackRefusal = PeriodBackwards | TestPointsRefusal;

function byUrgency(a: ReachedJoint, b: ReachedJoint): number {
  return (
    compareNumbers(Number(b.handedOver), Number(a.handedOver)) ||
    compareText(a.class, b.class) ||
    compareNumbers(b.probabilityOutside ?? 1, a.probabilityOutside ?? 1) ||
    compareText(a.job, b.job) ||
    compareText(a.joint, b.joint)
  );
}
