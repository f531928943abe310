/** What types like a keyboard: a bar-code scanner, a wrench that shows; and bar codes in pictures where the browser can read them. */

/** Milliseconds; a person types slower than this, a device faster. */
const longestGap = 50;
/** The end key of a slow wrench still belongs to its reading. */
const lateEnd = 250;

interface Typist {
  /** Fewer keys than this in one burst are no message. */
  readonly shortest: number;
  /** Keys that end a message and are taken away with it. */
  readonly endKeys: readonly string[];
  /** What is typed into a field belongs to the field. */
  readonly besideFields: boolean;
}

const typists = {
  scanner: { shortest: 6, endKeys: ['Enter'], besideFields: false },
  wrench: { shortest: 2, endKeys: ['Enter', 'Tab'], besideFields: true },
} as const satisfies Readonly<Record<string, Typist>>;

export type TypedBy = keyof typeof typists;

/**
 * Calls back with each message that came faster than a hand can type. The Enter that is sent after it is taken away: a
 * scan or a reading never presses a button. A wrench is heard beside every field, a scanner everywhere.
 */
export function onScannedCode(
  listener: (text: string) => void,
  by: TypedBy = 'scanner',
  page: Pick<Document, 'addEventListener' | 'removeEventListener'> = document,
): () => void {
  const { shortest, endKeys, besideFields }: Typist = typists[by];
  let typed = '';
  let lastAt = Number.NEGATIVE_INFINITY;
  let burstAt = Number.NEGATIVE_INFINITY;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function finish(): void {
    const text = typed;
    typed = '';
    if (text.length >= shortest) listener(text);
  }

  function take(event: KeyboardEvent): void {
    event.preventDefault();
    event.stopPropagation();
  }

  function end(event: KeyboardEvent, isFast: boolean): void {
    const isOfBurst = isFast && typed.length >= shortest;
    if (isOfBurst) finish();
    if (isOfBurst || (besideFields && (isFast || event.timeStamp - burstAt < lateEnd))) take(event);
    typed = '';
  }

  function onKey(event: KeyboardEvent): void {
    clearTimeout(timer);
    const isFast = event.timeStamp - lastAt < longestGap;
    lastAt = event.timeStamp;
    if (besideFields && isField(event.target)) {
      typed = '';
      return;
    }
    if (endKeys.includes(event.key)) {
      end(event, isFast);
      return;
    }
    if (event.key.length !== 1 || event.ctrlKey || event.altKey || event.metaKey) return;
    typed = isFast ? typed + event.key : event.key;
    if (isFast && besideFields) {
      burstAt = event.timeStamp;
      // A space in a reading would press what has the focus.
      take(event);
    }
    // Some devices send nothing after their message.
    timer = setTimeout(finish, longestGap * 2);
  }

  page.addEventListener('keydown', onKey, { capture: true });
  return () => {
    clearTimeout(timer);
    page.removeEventListener('keydown', onKey, { capture: true });
  };
}

/** Takes words: keys that go there were meant for it. */
function isField(target: EventTarget | null): boolean {
  const { tagName, isContentEditable, type } = (target ?? {}) as Partial<HTMLInputElement>; // any target may be asked
  if (tagName === 'INPUT') return !['radio', 'checkbox', 'button', 'submit'].includes(type ?? '');
  return tagName === 'TEXTAREA' || tagName === 'SELECT' || isContentEditable === true;
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
