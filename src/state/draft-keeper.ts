/** Typed words reach the disk soon after the last key, and at once when the page is left. */

import type { Storage } from '../storage/contract';

/** Milliseconds; a crash costs at most this much typing. */
const pause = 250;

export interface DraftKeeper {
  keepSoon(drafts: Readonly<Record<string, string>>): void;
}

export function createDraftKeeper(
  settings: Storage['settings'],
  onLeaving: (listener: () => void) => () => void,
): DraftKeeper {
  let waiting: Readonly<Record<string, string>> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function keepNow(): void {
    clearTimeout(timer);
    timer = undefined;
    if (waiting === undefined) return;
    const drafts = waiting;
    waiting = undefined;
    void settings.put({ id: 'drafts', value: drafts }).catch(() => {
      // Still on the screen: tried again with the next key or when the page is left.
      waiting ??= drafts;
    });
  }

  onLeaving(keepNow);
  return {
    keepSoon(drafts) {
      waiting = drafts;
      timer ??= setTimeout(keepNow, pause);
    },
  };
}
