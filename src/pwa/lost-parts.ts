/** When a part of the app cannot be loaded, one reload fetches a whole version; a second one would only go round in circles. */

const mark = 'standbook.reloaded-for-lost-part';

export interface LostPartsOptions {
  readonly page?: Window;
  /** Remembers across the reload, and only in this tab. */
  readonly memory?: Pick<Storage, 'getItem' | 'setItem'>;
  readonly reload?: () => void;
}

/** Reloads at most once per tab on `vite:preloadError`; after that the error goes to whoever asked for the part. */
export function reloadOnceOnLostPart(options: LostPartsOptions = {}): void {
  const { page = window, memory = page.sessionStorage } = options;
  const reload = options.reload ?? (() => page.location.reload());
  page.addEventListener('vite:preloadError', (event) => {
    if (memory.getItem(mark) !== null) return;
    memory.setItem(mark, 'yes');
    event.preventDefault();
    reload();
  });
}
