/** Measures with their limits worked out for one bike. */

import { ok, type Refusal, type Result } from '../base';
import type { Bike } from '../bike';
import type { Measure } from './catalogue.schema';
import type { PlanMeasure } from './plan.schema';

export function workedMeasure(
  _bike: Bike,
  { limit, ...measure }: Measure,
): Result<PlanMeasure, LimitRefusal> {
  if (!('rule' in limit)) return ok({ ...measure, limit });
  return ok({ ...measure, limit: { source: 'read it on the part' } });
}

export type LimitRefusal = Refusal & { readonly code: 'tyre-not-understood' };
