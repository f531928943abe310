/** Values to tap instead of typing: round, evenly spaced, and all inside the limit. */

import type { Limit } from '../plan';

/** With the one for any other value they fill two rows of four. */
const most = 7;
/** Below this, a limit is on play or swing and counts from nothing; above it, on a length and counts back from the limit. */
const SMALL = 10;

/**
 * Up to seven values in the limit's own unit, smallest first; none without a limit. Between two limits they fill the
 * space; under a small maximum they begin at 0; under a large one, and over a minimum, they lie next to the limit,
 * where a measured value is most often met. What to offer is our own judgement, not a rule of the trade.
 */
export function readyValues({ min, max }: Pick<Limit, 'min' | 'max'>): readonly number[] {
  if (min !== undefined && max !== undefined)
    return upwards(min, max, roundStep((max - min) / most));
  if (max !== undefined) {
    if (max <= SMALL) return upwards(0, max, roundStep(max / 5));
    const step = roundStep(max / 20);
    const highest = Math.floor(max / step + DUST) * step;
    return upwards(Math.max(0, highest - step * (most - 1)), max, step);
  }
  if (min === undefined || min < 0) return [];
  const step = roundStep(min / 10);
  return upwards(min, Number.POSITIVE_INFINITY, step);
}

const DUST = 1e-9;

function upwards(from: number, to: number, step: number): readonly number[] {
  if (!(step > 0)) return [];
  const first = Math.ceil(from / step - DUST);
  const values: number[] = [];
  for (let count = first; values.length < most && count * step <= to + step * DUST; count += 1)
    values.push(Number((count * step).toPrecision(9)));
  return values;
}

/** The nearest of 1, 2 and 5 times a power of ten that is not smaller. */
function roundStep(rough: number): number {
  if (!(rough > 0)) return 0;
  const power = 10 ** Math.floor(Math.log10(rough) + DUST);
  const factor = [1, 2, 5].find((one) => rough <= one * power * (1 + DUST)) ?? 10;
  return factor * power;
}
