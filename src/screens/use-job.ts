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
    let isLeft = false;
    let leave = () => {};
    void app.openJobStore(job).then((store) => {
      if (isLeft) return store.close();
      const follow = () => show({ store, open: store.getState() });
      follow();
      const stop = store.subscribe(follow);
      leave = () => {
        stop();
        store.close();
      };
    });
    return () => {
      isLeft = true;
      leave();
    };
  }, [app, job]);
  return shown?.open.job === job ? shown : undefined;
}
