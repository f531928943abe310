/** Open jobs, one store each, shared by everybody who has it open. */

import { createJobStore, type JobStore, type JobStorePorts } from './job-store';

export function createJobStores(ports: JobStorePorts): (job: string) => JobStore {
  const shared = new Map<string, { readonly store: JobStore; holders: number }>();

  return (job) => {
    const open = shared.get(job) ?? { store: createJobStore(ports, job), holders: 0 };
    open.holders += 1;
    shared.set(job, open);
    let isHeld = true;
    return {
      ...open.store,
      close() {
        if (!isHeld) return;
        isHeld = false;
        open.holders -= 1;
        if (open.holders > 0) return;
        shared.delete(job);
        open.store.close();
      },
    };
  };
}
