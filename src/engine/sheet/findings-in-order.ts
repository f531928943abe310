/** The findings of a sheet as they are read: what was let go first and apart, then the worst first. */

import { type Severity, severities } from '../inspection';

export interface FoundOnBike {
  readonly severity: Severity;
  readonly closed?: unknown;
  readonly allowed?: unknown;
}

export interface FindingsInOrder<Found> {
  /** The bike goes out with these on somebody's word. */
  readonly letGo: readonly Found[];
  readonly others: readonly Found[];
}

/** Each group by severity, the worst first; of one severity, as they were found. */
export function findingsInOrder<Found extends FoundOnBike>(
  findings: readonly Found[],
): FindingsInOrder<Found> {
  const sorted = [...findings].sort(
    (a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity),
  );
  const isLetGo = ({ allowed, closed }: FoundOnBike) =>
    allowed !== undefined && closed === undefined;
  return { letGo: sorted.filter(isLetGo), others: sorted.filter((one) => !isLetGo(one)) };
}
