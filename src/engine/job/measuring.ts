/** Measures: values with limits, at a step or at a point. */

import { ok, type Result, refuse } from '../base';
import { judgeMeasure } from '../inspection';
import type { PlanMeasure, PlanStep } from '../plan';
import type { EventOf } from './event.schema';
import type { JobState } from './state';
import { pointById, stepById } from './status';

export type MeasureUnknown = { readonly code: 'measure-unknown'; readonly measure: string };

/** What was measured, judged against its limit; a value outside is kept too, as what it is. */
export function measureEvent(
  state: JobState,
  at: string,
  id: string,
  value: number,
): Result<EventOf<'measure-taken'>, MeasureUnknown> {
  const measure = measuresAt(state, at).find((candidate) => candidate.id === id);
  if (measure === undefined || !Number.isFinite(value))
    return refuse({ code: 'measure-unknown', measure: id });
  const judged = judgeMeasure(measure.limit, value);
  return ok({ kind: 'measure-taken', v: 1, at, measure: id, value, unit: measure.unit, judged });
}

export function measuresAt(state: JobState, at: string): readonly PlanMeasure[] {
  const point = pointById(state, at)?.measure;
  return stepById(state, at)?.measures ?? (point === undefined ? [] : [point]);
}

/** The step's measures that have no good, standing value yet. */
export function missingMeasures(state: JobState, step: PlanStep): readonly string[] {
  return step.measures
    .map(({ id }) => id)
    .filter((id) => {
      const mark = state.measures[`${step.id}.${id}`];
      return mark === undefined || mark.stale || mark.judged === 'outside';
    });
}
