/** Whether a reading shows that a bolt is inside its figure, when the wrench itself may be off. */

import { type NewtonMetres, newtonMetres } from '../units';
import type { Adapter } from './adapter.schema';
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
};

/**
 * Inside when every torque the reading can stand for keeps to the figure, outside when none does, undecided between: the
 * guard band of ISO 14253-1 (JCGM 106), as wide as the wrench's whole deviation at that reading and the rounding of what it
 * showed. A single value is inside when it is met as a set point meets it, else outside. A figure or an adapter that makes
 * no sense decides nothing.
 */
export function judgeReading(read: Read): ReadingVerdict {
  const weighed = weigh(read);
  return weighed === undefined ? 'undecided' : verdictOn(weighed);
}

/** The probability, 0 to 1, that the bolt is inside its figure, by the distribution named at `riskOutside`; none when the figure or the adapter makes no sense. */
export function probabilityInside(read: Read): number | undefined {
  const weighed = weigh(read);
  if (weighed === undefined) return undefined;
  const { demand, indicated, band, tolerance } = weighed;
  return 1 - riskOutside(demand, indicated, band, tolerance);
}

export type Weighed = {
  readonly demand: Demand;
  /** N·m at the fastener, and where it may have ended. */
  readonly indicated: NewtonMetres;
  readonly low: number;
  readonly high: number;
  readonly band: DeviationBand;
  readonly tolerance: number;
};

export function weigh(read: Read): Weighed | undefined {
  const { figure, wrench, reading, adapter, halfStep = 0 } = read;
  const demand = demandOf(figure);
  const factor = adapter === undefined ? undefined : adapterFactor(adapter, wrench);
  if (!demand.ok || factor?.ok === false || !(reading > 0 && halfStep < reading)) return undefined;
  const indicated = newtonMetres(reading * (factor?.value ?? 1));
  const band = rounded(deviationAt(wrench, reading), halfStep / reading);
  const tolerance = singleValueTolerance(wrench);
  return {
    demand: demand.value,
    indicated,
    band,
    tolerance,
    ...deliveredInterval(indicated, band),
  };
}

export function verdictOn(weighed: Weighed): ReadingVerdict {
  const { demand, indicated, low, high, band, tolerance } = weighed;
  const { min, max } = printedLimits(demand);
  if (low > max * (1 + DUST) || high < min * (1 - DUST)) return 'outside';
  if (demand.kind === 'single' && !meets(demand.target, indicated, band, tolerance))
    return 'outside';
  return low >= min * (1 - DUST) && high <= max * (1 + DUST) ? 'inside' : 'undecided';
}

const DUST = 1e-9;

/** A value shown as x may stand for x·(1 ± share): the same as a deviation that reaches further. */
function rounded({ low, high }: DeviationBand, share: number): DeviationBand {
  if (!(share > 0)) return { low, high };
  return { low: (1 + low) / (1 + share) - 1, high: (1 + high) / (1 - share) - 1 };
}
