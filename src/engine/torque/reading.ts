/** Whether a reading shows that a bolt is inside its figure, when the wrench itself may be off. */

import { type NewtonMetres, newtonMetres } from '../units';
import type { Adapter } from './adapter.schema';
import { demandOf } from './demand';
import { deliveredInterval, permissibleDeviation } from './deviation';
import type { Figure } from './figure.schema';
import { adapterFactor } from './leverage';
import { riskOutside } from './risk';
import { printedLimits } from './window';
import type { Wrench } from './wrench.schema';

export const readingVerdicts = ['inside', 'outside', 'undecided'] as const;

export type ReadingVerdict = (typeof readingVerdicts)[number];

type Read = {
  readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
  readonly wrench: Wrench;
  /** N·m at the wrench: the set point at which it clicked, or what it showed. */
  readonly reading: NewtonMetres;
  readonly adapter?: Adapter | undefined;
};

/**
 * Inside when every torque the reading can stand for keeps to the figure, outside when none does, undecided between: the
 * guard band of ISO 14253-1 (JCGM 106), as wide as the wrench's whole permissible deviation. A single value is inside
 * when the reading can stand for it, else outside. A figure or an adapter that makes no sense decides nothing.
 */
export function judgeReading(read: Read): ReadingVerdict {
  const weighed = weigh(read);
  if (weighed === undefined) return 'undecided';
  const { demand, low, high } = weighed;
  const { min, max } = printedLimits(demand);
  if (low > max * (1 + DUST) || high < min * (1 - DUST)) return 'outside';
  if (demand.kind === 'single') {
    const contains = low <= demand.target * (1 + DUST) && high >= demand.target * (1 - DUST);
    if (!contains) return 'outside';
  }
  return low >= min * (1 - DUST) && high <= max * (1 + DUST) ? 'inside' : 'undecided';
}

const DUST = 1e-9;

/** The probability, 0 to 1, that the bolt is inside its figure, by the distribution named at `riskOutside`; none when the figure or the adapter makes no sense. */
export function probabilityInside(read: Read): number | undefined {
  const weighed = weigh(read);
  if (weighed === undefined) return undefined;
  return 1 - riskOutside(weighed.demand, weighed.indicated, weighed.deviation);
}

function weigh({ figure, wrench, reading, adapter }: Read) {
  const demand = demandOf(figure);
  const factor = adapter === undefined ? undefined : adapterFactor(adapter, wrench);
  if (!demand.ok || factor?.ok === false || !(reading > 0)) return undefined;
  const indicated = newtonMetres(reading * (factor?.value ?? 1));
  const deviation = permissibleDeviation(wrench);
  return { demand: demand.value, indicated, deviation, ...deliveredInterval(indicated, deviation) };
}
