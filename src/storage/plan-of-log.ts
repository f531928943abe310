/** Which plan a log names. */

import { type Entry, orderLog } from '../engine/integrity';

/** The digest of the plan of the first opening in log order; none while the bike is still boxed. */
export function planDigestIn(entries: readonly Entry[]): string | undefined {
  const opened = orderLog(entries).find(({ event }) => event.kind === 'job-opened');
  if (opened === undefined) return undefined;
  const { event } = opened;
  return 'plan' in event && typeof event.plan === 'string' ? event.plan : undefined;
}
