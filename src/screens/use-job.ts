/** One open job, followed while a screen shows it. */

import { useEffect, useState } from 'react';
import type { JobStore, OpenJob } from '../state';
import { useApp } from './app-context';

export interface ShownJob {
  readonly store: JobStore;
  readonly open: OpenJob;
}

/** Undefined until the job's store is there. */
export function useJob(job: string): ShownJob | undefined {
  const app = useApp();
  const [shown, show] = useState<ShownJob>();
  useEffect(() => {
    const store = app.openJobStore(job);
    const follow = () => show({ store, open: store.getState() });
    follow();
    const stop = store.subscribe(follow);
    return () => {
      stop();
      store.close();
    };
  }, [app, job]);
  return shown?.open.job === job ? shown : undefined;
}
