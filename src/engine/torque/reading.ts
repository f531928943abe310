/** Whether a reading shows that a bolt is inside its figure, when the wrench itself may be off. */

import { type NewtonMetres, newtonMetres } from '../units';
import type { Adapter } from './adapter.schema';
import { conformityProbability, expandedUncertainty, type Uncertainty } from './conformity';
import { type Demand, demandOf } from './demand';
import { deliveredInterval, deviationAt, singleValueTolerance } from './deviation';
import type { DeviationBand } from './deviation-curve';
import type { Figure } from './figure.schema';
import { adapterFactor } from './leverage';
import { meets, riskOutside } from './risk';
import { printedLimits } from './window';
import type { Wrench } from './wrench.schema';

export const readingVerdicts = ['inside', 'outside', 'undecided'] as const;

export type ReadingVerdict = (typeof readingVerdicts)[number];

export type Read = {
  readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
  readonly wrench: Wrench;
  /** N·m at the wrench: the set point at which it clicked, or what it showed. */
  readonly reading: NewtonMetres;
  readonly adapter?: Adapter | undefined;
  /** N·m: half of the last digit of a value that was shown, which may have been rounded by as much; a click has none. */
  readonly halfStep?: number | undefined;
  /** N·m at the wrench, where the reading has an uncertainty of its own: it takes the place of the wrench's deviation. */
  readonly uncertainty?: Uncertainty | undefined;
};

/**
 * Inside when every torque the reading can stand for keeps to the figure, outside when none does, undecided between: the
 * guard band of ISO 14253-1 (JCGM 106), as wide as the wrench's whole deviation at that reading and the rounding of what it
 * showed, or as the reading's own expanded uncertainty (k = 2). A single value is inside when it is met as a set point meets
 * it, else outside. A figure or an adapter that makes no sense decides nothing.
 */
export function judgeReading(read: Read): ReadingVerdict {
  return weigh(read)?.verdict ?? 'undecided';
}

/** The probability, 0 to 1, that the bolt is inside its figure, by the distribution named at `riskOutside`, or by the reading's own; none when the figure or the adapter makes no sense. */
export function probabilityInside(read: Read): number | undefined {
  return weigh(read)?.probabilityInside;
}

export type Weighed = {
  readonly verdict: ReadingVerdict;
  readonly probabilityInside: number;
  /** N·m at the fastener: where the bolt may have ended. */
  readonly low: number;
  readonly high: number;
};

export function weigh(read: Read): Weighed | undefined {
  const { figure, wrench, reading, adapter, halfStep = 0, uncertainty } = read;
  const demand = demandOf(figure);
  const factor = adapter === undefined ? undefined : adapterFactor(adapter, wrench);
  if (!demand.ok || factor?.ok === false || !(reading > 0 && halfStep < reading)) return undefined;
  const lever = factor?.value ?? 1;
  const indicated = newtonMetres(reading * lever);
  if (uncertainty !== undefined) return byItself(demand.value, indicated, lever, uncertainty);
  const band = rounded(deviationAt(wrench, reading), halfStep / reading);
  const { low, high } = deliveredInterval(indicated, band);
  const tolerance = singleValueTolerance(wrench);
  const isMet =
    demand.value.kind !== 'single' || meets(demand.value.target, indicated, band, tolerance);
  const probabilityInside = 1 - riskOutside(demand.value, indicated, band, tolerance);
  return { verdict: verdictOn(demand.value, low, high, isMet), probabilityInside, low, high };
}

function byItself(
  demand: Demand,
  indicated: NewtonMetres,
  lever: number,
  uncertainty: Uncertainty,
): Weighed {
  const reach = expandedUncertainty(uncertainty) * lever;
  const [low, high] = [Math.max(0, indicated - reach), indicated + reach];
  const isMet = demand.kind !== 'single' || Math.abs(demand.target - indicated) <= reach + DUST;
  const atTheFastener: Uncertainty =
    uncertainty.distribution === 'normal'
      ? { distribution: 'normal', standard: uncertainty.standard * lever }
      : { distribution: 'rectangular', halfWidth: uncertainty.halfWidth * lever };
  const probabilityInside = isMet
    ? conformityProbability(indicated, printedLimits(demand), atTheFastener)
    : 0;
  return { verdict: verdictOn(demand, low, high, isMet), probabilityInside, low, high };
}

function verdictOn(demand: Demand, low: number, high: number, isMet: boolean): ReadingVerdict {
  const { min, max } = printedLimits(demand);
  if (!isMet || low > max * (1 + DUST) || high < min * (1 - DUST)) return 'outside';
  return low >= min * (1 - DUST) && high <= max * (1 + DUST) ? 'inside' : 'undecided';
}

const DUST = 1e-9;

/** A value shown as x may stand for x·(1 ± share): the same as a deviation that reaches further. */
function rounded({ low, high }: DeviationBand, share: number): DeviationBand {
  if (!(share > 0)) return { low, high };
  return { low: (1 + low) / (1 + share) - 1, high: (1 + high) / (1 - share) - 1 };
}
