/** The last moment in which a page can still keep something. */

/** On a tablet a hidden page may never come back, so hiding counts as leaving. */
export function onLeaving(listener: () => void, page: Window = window): () => void {
  const whenHidden = () => {
    if (page.document.visibilityState === 'hidden') listener();
  };
  page.addEventListener('pagehide', listener);
  page.document.addEventListener('visibilitychange', whenHidden);
  return () => {
    page.removeEventListener('pagehide', listener);
    page.document.removeEventListener('visibilitychange', whenHidden);
  };
}
