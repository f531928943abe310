/** The chance that a bolt ends outside its figure. */

import type { Demand } from './demand';
import { deliveredInterval } from './deviation';
import type { DeviationBand } from './deviation-curve';
import { printedLimits, toleranceBand } from './window';

/**
 * The probability, 0 to 1, that the joint ends outside its demand when the wrench indicates `indicated` (times the
 * adapter's factor) and deviates somewhere within the band. The deviation is taken as evenly spread over it: a class or a
 * certificate gives limits and nothing about what lies between them, for which GUM (JCGM 100:2008, 4.3.7) has the
 * rectangular distribution. A single value has no width to fall outside of: it is met when it may be what is delivered,
 * or differs from the likeliest torque by no more than the `tolerance` (a fraction); else the risk is 1.
 */
export function riskOutside(
  demand: Demand,
  indicated: number,
  band: DeviationBand,
  tolerance: number,
): number {
  const { min, max } = printedLimits(demand);
  if (demand.kind === 'single' && !meets(demand.target, indicated, band, tolerance)) return 1;
  const width = band.high - band.low;
  const highest = min > 0 ? Math.min(band.high, indicated / min - 1) : band.high;
  const lowest = Math.max(band.low, indicated / max - 1);
  if (width <= DUST) return highest >= lowest - DUST ? 0 : 1;
  const inside = Math.max(0, highest - lowest) / width;
  return inside > 1 - DUST ? 0 : 1 - inside;
}

/** Whether a single value may be what a bolt that reads `indicated` has been given. */
export function meets(
  target: number,
  indicated: number,
  band: DeviationBand,
  tolerance: number,
): boolean {
  const { low, high } = deliveredInterval(indicated, toleranceBand(band, tolerance));
  return target >= low * (1 - DUST) && target <= high * (1 + DUST);
}

const DUST = 1e-9;
