/** What an adapter does to the torque a wrench delivers. */

import { ok, type Result, refuse } from '../base';
import type { Adapter } from './adapter.schema';
import type { Wrench } from './wrench.schema';
import { wrenchClassTable } from './wrench-classes';

/**
 * The factor from torque at the wrench to torque at the fastener: (L + E·cos θ) / L (US Army TM 9-254). A straight
 * extension on the drive axis has E = 0 and changes nothing. Refuses a length that cannot be, an adapter that brings
 * the fastener to the hand or behind it, and any adapter off the axis of a screwdriver, which has no lever.
 */
export function adapterFactor(
  { grip, offset, angle }: Adapter,
  wrench: Pick<Wrench, 'type' | 'class'>,
): Result<number, AdapterImpossible> {
  if (!(grip > 0 && offset >= 0 && Number.isFinite(angle))) return impossible('lengths');
  const factor = (grip + offset * Math.cos((angle * Math.PI) / 180)) / grip;
  if (!(Number.isFinite(factor) && factor > 1e-6)) return impossible('reaches-the-hand');
  const turnsOnItsAxis = wrenchClassTable[wrench.type][wrench.class]?.screwdriver === true;
  return turnsOnItsAxis && offset > 0 ? impossible('screwdriver') : ok(factor);
}

export type AdapterImpossible = {
  readonly code: 'adapter-impossible';
  readonly because: 'lengths' | 'reaches-the-hand' | 'screwdriver';
};

function impossible(because: AdapterImpossible['because']) {
  return refuse<AdapterImpossible>({ code: 'adapter-impossible', because });
}
