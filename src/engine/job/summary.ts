/** What the rack shows of a job, so that a list never has to read logs. */

import type { Zone } from '../base';
import type { BikeKind } from '../bike';
import type { JobState } from './state';
import {
  isPointSettled,
  type JobStatus,
  openFindings,
  pointsOf,
  standingOfStep,
  statusOf,
  stepsOf,
} from './status';
import { type Waiting, waitsFor } from './waiting';

export interface ZoneCount {
  readonly zone: Zone;
  readonly done: number;
  readonly of: number;
}

export interface JobSummary {
  readonly status: JobStatus;
  readonly make: string;
  readonly model: string;
  readonly kind: BikeKind;
  readonly frameNumber: string;
  readonly gtin?: string | undefined;
  readonly colour?: string | undefined;
  readonly size?: string | undefined;
  /** ISO local date and time, as promised; absent when nobody promised. */
  readonly due?: string | undefined;
  readonly waiting: readonly Waiting[];
  readonly zones: readonly ZoneCount[];
  readonly steps: { readonly done: number; readonly of: number };
  readonly points: { readonly done: number; readonly of: number };
  readonly openFindings: number;
  /** Who was last at it, and when their clock claimed. */
  readonly lastBy?: string | undefined;
  readonly lastAt?: string | undefined;
  readonly handedOverAt?: string | undefined;
}

/** Undefined until a box has been received. */
export function summaryOf(
  state: JobState,
  last?: { by: string; at: string },
): JobSummary | undefined {
  const { bike } = state;
  if (bike === undefined) return undefined;
  const zones = zoneCounts(state);
  const points = pointsOf(state);
  return {
    status: statusOf(state),
    make: bike.make,
    model: bike.model,
    kind: bike.kind,
    frameNumber: bike.frameNumber,
    gtin: bike.gtin,
    colour: bike.colour,
    size: bike.size,
    due: state.due,
    waiting: waitsFor(state),
    zones,
    steps: { done: sum(zones, 'done'), of: sum(zones, 'of') },
    points: {
      done: points.filter((point) => isPointSettled(state, point.id)).length,
      of: points.length,
    },
    openFindings: openFindings(state).length,
    lastBy: last?.by,
    lastAt: last?.at,
    handedOverAt: state.handedOver?.at.claimed,
  };
}

/** Steps done and to do by zone, zones in the order in which the plan first visits them. */
export function zoneCounts(state: JobState): readonly ZoneCount[] {
  const counts = new Map<Zone, { done: number; of: number }>();
  for (const step of stepsOf(state)) {
    const count = counts.get(step.zone) ?? { done: 0, of: 0 };
    count.of += 1;
    if (standingOfStep(state, step.id) === 'done') count.done += 1;
    counts.set(step.zone, count);
  }
  return [...counts].map(([zone, count]) => ({ zone, ...count }));
}

function sum(zones: readonly ZoneCount[], member: 'done' | 'of'): number {
  return zones.reduce((total, zone) => total + zone[member], 0);
}
