/** The deviation that the type and class of a wrench allow it. */

import { assert } from '../base';
import { newtonMetresFrom } from '../units';
import type { Wrench } from './wrench.schema';
import { SMALL_TOOL_MAXIMUM_NEWTON_METRES, wrenchClassTable } from './wrench-classes';

export type RatedByClass = Pick<Wrench, 'type' | 'class' | 'highest' | 'unit'>;

/**
 * The largest deviation a wrench of this type, class and maximum may have, as a fraction, whatever its certificate says
 * (ISO 6789-1:2017): what a calibration is judged by.
 */
export function classDeviation(wrench: RatedByClass): number {
  const row = wrenchClassTable[wrench.type][wrench.class];
  assert(row !== undefined, `type ${wrench.type} has no class ${wrench.class}`);
  const maximum = newtonMetresFrom(wrench.highest, wrench.unit);
  return maximum <= SMALL_TOOL_MAXIMUM_NEWTON_METRES * (1 + DUST) ? row.upTo10 : row.above10;
}

/** What converting a scale's highest value from its unit may add to it. */
const DUST = 1e-9;
