/** An open job follows what another tab, or a file from another tablet, adds to it. */

import type { StoreApi } from 'zustand/vanilla';
import type { JobRow } from '../storage/contract';
import type { OpenJob } from './open-job';
import type { RowsStore } from './rows-store';

/** Reloads when the rack's row has heads that this job has not seen; counts only what came from elsewhere. */
export function followJob(
  store: StoreApi<OpenJob>,
  rack: RowsStore<JobRow>,
  reload: () => Promise<void>,
  isOwn: (entry: string) => boolean,
): () => void {
  let isReloading = false;

  async function follow(): Promise<void> {
    const { job, status, busy, entries } = store.getState();
    if (isReloading || busy || status === 'loading') return;
    const row = rack.getState().rows.find((candidate) => candidate.job === job);
    const isKnown = row?.heads.every((head) => entries.some(({ id }) => id === head)) ?? true;
    if (isKnown) return;
    isReloading = true;
    await reload();
    isReloading = false;
    const before = new Set(entries.map(({ id }) => id));
    const added = store.getState().entries.filter(({ id }) => !before.has(id));
    if (added.some(({ id }) => !isOwn(id)))
      store.setState(({ changedElsewhere }) => ({ changedElsewhere: changedElsewhere + 1 }));
  }

  const stopRack = rack.subscribe(() => void follow());
  // A change that came while this tab was writing is looked at once it has written.
  const stopStore = store.subscribe((now, before) => {
    if (before.busy && !now.busy) void follow();
  });
  return () => {
    stopRack();
    stopStore();
  };
}
