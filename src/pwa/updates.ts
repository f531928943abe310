/** Looks for a newer version of the app and offers it; the page is never reloaded under a person's hands. */

import { Workbox } from 'workbox-window';
import { workerUrl } from './worker-url';

const hour = 60 * 60 * 1000;

export interface OfferedUpdate {
  /** Lets the waiting version take over and reloads this page once it has. Call it only where no work is open. */
  apply(): void;
}

export interface UpdateWatch {
  /** Asks the server now; without a network nothing happens. */
  check(): Promise<void>;
  stop(): void;
}

export interface UpdateWatchOptions {
  /** Called when a newer version is on the device and waits. It may be called again for a later version. */
  readonly onOffered: (update: OfferedUpdate) => void;
  /** Called when the browser will not keep the app on the device, so it will not open without a network. */
  readonly onUnavailable?: (reason: unknown) => void;
  /** How the page is reloaded after `apply()`. */
  readonly reload?: () => void;
}

export function watchForUpdates(options: UpdateWatchOptions): UpdateWatch {
  const { onOffered, onUnavailable, reload = () => window.location.reload() } = options;
  if (!('serviceWorker' in navigator)) {
    onUnavailable?.(new Error('This browser has no service workers.'));
    return { check: async () => {}, stop: () => {} };
  }

  const workbox = new Workbox(workerUrl());
  let applying = false;
  workbox.addEventListener('waiting', () => {
    onOffered({
      apply() {
        if (applying) return;
        applying = true;
        workbox.addEventListener('controlling', reload);
        workbox.messageSkipWaiting();
      },
    });
  });
  const registered = workbox.register({ immediate: true }).catch((reason: unknown) => {
    onUnavailable?.(reason);
    return undefined;
  });

  const check = async () => {
    const registration = await registered;
    // Rejected when the server cannot be reached: being offline is no fault.
    await registration?.update().catch(() => undefined);
  };
  const timer = window.setInterval(check, hour);
  return { check, stop: () => window.clearInterval(timer) };
}
