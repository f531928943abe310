/** Bar codes: from a scanner that types like a keyboard, and from pictures where the browser can read them. */

/** A person types slower than this, a scanner faster. */
const longestGap = 50;
const shortestCode = 6;

/**
 * Calls back with each code that came faster than a hand can type. The Enter that a scanner sends after it is taken
 * away: a scan never presses a button.
 */
export function onScannedCode(
  listener: (code: string) => void,
  page: Pick<Document, 'addEventListener' | 'removeEventListener'> = document,
): () => void {
  let typed = '';
  let lastAt = Number.NEGATIVE_INFINITY;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function finish(): void {
    const code = typed;
    typed = '';
    if (code.length >= shortestCode) listener(code);
  }

  function onKey(event: KeyboardEvent): void {
    clearTimeout(timer);
    const isFast = event.timeStamp - lastAt < longestGap;
    lastAt = event.timeStamp;
    if (event.key === 'Enter') {
      if (isFast && typed.length >= shortestCode) {
        event.preventDefault();
        event.stopPropagation();
        finish();
      }
      typed = '';
      return;
    }
    if (event.key.length !== 1 || event.ctrlKey || event.altKey || event.metaKey) return;
    typed = isFast ? typed + event.key : event.key;
    // Some scanners send nothing after the code.
    timer = setTimeout(finish, longestGap * 2);
  }

  page.addEventListener('keydown', onKey, { capture: true });
  return () => {
    clearTimeout(timer);
    page.removeEventListener('keydown', onKey, { capture: true });
  };
}

export interface PictureScanner {
  codesIn(picture: ImageBitmapSource): Promise<readonly string[]>;
}

/** Not in the DOM types: only some browsers have it. */
interface BarcodeDetectorLike {
  detect(picture: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}

/** Only where the browser itself reads bar codes. */
export function createPictureScanner(
  browser: object & { readonly BarcodeDetector?: new () => BarcodeDetectorLike } = window,
): PictureScanner | undefined {
  if (browser.BarcodeDetector === undefined) return undefined;
  const detector = new browser.BarcodeDetector();
  return {
    async codesIn(picture) {
      return (await detector.detect(picture)).map(({ rawValue }) => rawValue);
    },
  };
}
