/** The rack: every job in the order in which somebody asks for it. */

import { compareNumbers, compareText } from '../engine/base';
import { type JobStatus, jobStatuses } from '../engine/job';
import type { JobRow } from '../storage/contract';

/** Due first, earliest first; what nobody promised after that; what has gone home last, latest first. */
export function sortRows(rows: readonly JobRow[]): readonly JobRow[] {
  return [...rows].sort(compareRows);
}

export interface RackFilter {
  readonly status?: readonly JobStatus[];
  /** Found in make, model, colour, size or frame number. */
  readonly text?: string;
}

export function filterRows(rows: readonly JobRow[], filter: RackFilter): readonly JobRow[] {
  const words = (filter.text ?? '').toLowerCase().split(/\s+/).filter(Boolean);
  return rows.filter((row) => {
    if (filter.status !== undefined && !filter.status.includes(row.status)) return false;
    const { make, model, colour = '', size = '', frameNumber } = row;
    const shown = [make, model, colour, size, frameNumber].join(' ').toLowerCase();
    return words.every((word) => shown.includes(word));
  });
}

function compareRows(a: JobRow, b: JobRow): number {
  const [goneA, goneB] = [a.status === 'handed-over', b.status === 'handed-over'];
  if (goneA !== goneB) return goneA ? 1 : -1;
  if (goneA) return compareText(b.handedOverAt ?? '', a.handedOverAt ?? '') || byJob(a, b);
  return (
    compareText(a.due ?? '~', b.due ?? '~') || // a tilde comes after every digit
    compareNumbers(placeOf(b.status), placeOf(a.status)) ||
    byJob(a, b)
  );
}

/** Further along first: it is nearest to going home. */
function placeOf(status: JobStatus): number {
  return jobStatuses.indexOf(status);
}

function byJob(a: JobRow, b: JobRow): number {
  return compareText(a.frameNumber, b.frameNumber) || compareText(a.job, b.job);
}
