/** Keeps the tablet's screen awake while somebody works at the stand. */

interface Screen {
  readonly document: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'>;
  readonly navigator: { readonly wakeLock?: Pick<WakeLock, 'request'> };
}

/** Holds until the returned stop is called. The browser drops the lock when the page is hidden, so it is taken again. */
export function keepAwake(screen: Screen = window): () => void {
  let held: WakeLockSentinel | undefined;
  let isWanted = true;

  async function take(): Promise<void> {
    if (screen.document.visibilityState !== 'visible') return;
    // Refused on low battery, for example: then the screen simply sleeps as it always did.
    held = await screen.navigator.wakeLock?.request('screen').catch(() => undefined);
    if (!isWanted) await held?.release();
  }

  function retake(): void {
    void take();
  }

  screen.document.addEventListener('visibilitychange', retake);
  void take();
  return () => {
    isWanted = false;
    screen.document.removeEventListener('visibilitychange', retake);
    void held?.release();
  };
}
