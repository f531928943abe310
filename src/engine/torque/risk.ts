/** The chance that a bolt ends outside its figure. */

import type { Demand } from './demand';
import { deliveredInterval } from './deviation';
import { printedLimits } from './window';

/**
 * The probability, 0 to 1, that the joint ends outside its demand when the wrench indicates `indicated` (times the
 * adapter's factor). The deviation is taken as evenly spread over ± its limit: a class or a certificate gives
 * limits and nothing about what lies between them, for which GUM (JCGM 100:2008, 4.3.7) has the rectangular distribution. A
 * single value has no width to fall outside of: the risk is 0 when the delivered interval contains it, else 1.
 */
export function riskOutside(demand: Demand, indicated: number, deviation: number): number {
  const { min, max } = printedLimits(demand);
  if (demand.kind === 'single') {
    const { low, high } = deliveredInterval(indicated, deviation);
    if (demand.target < low * (1 - DUST) || demand.target > high * (1 + DUST)) return 1;
  }
  if (deviation === 0) return indicated >= min && indicated <= max ? 0 : 1;
  const highest = min > 0 ? Math.min(deviation, indicated / min - 1) : deviation;
  const lowest = Math.max(-deviation, indicated / max - 1);
  const inside = Math.max(0, highest - lowest) / (2 * deviation);
  return inside > 1 - DUST ? 0 : 1 - inside;
}

const DUST = 1e-9;
