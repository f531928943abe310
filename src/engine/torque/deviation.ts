/** How far a wrench may be from the truth, and where a bolt can therefore end. */

import { assert } from '../base';
import { newtonMetresFrom } from '../units';
import type { Certificate, Wrench } from './wrench.schema';
import { SMALL_TOOL_MAXIMUM_NEWTON_METRES, wrenchClassTable } from './wrench-classes';

type Rated = Pick<Wrench, 'type' | 'class' | 'highest' | 'unit' | 'certificate'>;

/**
 * The largest deviation a wrench may have, as a fraction: from its certificate when there is one, else from its type,
 * class and maximum (ISO 6789-1:2017). Of a certificate's points the worst counts, its expanded uncertainty added.
 */
export function permissibleDeviation(wrench: Rated): number {
  if (wrench.certificate !== undefined) return certifiedDeviation(wrench.certificate);
  const row = wrenchClassTable[wrench.type][wrench.class];
  assert(row !== undefined, `type ${wrench.type} has no class ${wrench.class}`);
  const maximum = newtonMetresFrom(wrench.highest, wrench.unit);
  return maximum <= SMALL_TOOL_MAXIMUM_NEWTON_METRES * (1 + DUST) ? row.upTo10 : row.above10;
}

/** What converting a scale's highest value from its unit may add to it. */
const DUST = 1e-9;

function certifiedDeviation({ deviation = 0, points = [] }: Certificate): number {
  return Math.max(
    deviation,
    ...points.map((point) => Math.abs(point.deviation) + (point.uncertainty ?? 0)),
  );
}

/** Deviation of an indicated or set value from the true one, as a signed fraction (ISO 6789-1:2017, from memory). */
export function relativeDeviation(indicated: number, actual: number): number {
  return (indicated - actual) / actual;
}

/** Where the true torque lies when a wrench shows `indicated` and deviates by at most `deviation` either way. */
export function deliveredInterval(
  indicated: number,
  deviation: number,
): { readonly low: number; readonly high: number } {
  return { low: indicated / (1 + deviation), high: indicated / (1 - deviation) };
}
