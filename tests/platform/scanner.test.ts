/** Scanners and wrenches type faster than a hand; what a hand types is left alone, and neither ever presses a button. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createPictureScanner, onScannedCode, type TypedBy } from '../../src/platform/scanner';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Keys that arrive so many milliseconds after each other; answers the codes heard and the Enters taken away. */
function typed(
  keys: readonly string[],
  gap: number,
  by: TypedBy = 'scanner',
  target: object | null = null,
): { codes: string[]; taken: number } {
  let listener: (event: KeyboardEvent) => void = () => undefined;
  const page = {
    addEventListener: (_: string, heard: (event: KeyboardEvent) => void) => {
      listener = heard;
    },
    removeEventListener: () => undefined,
  } as unknown as Document; // only these two are used
  const codes: string[] = [];
  let taken = 0;
  onScannedCode((code) => codes.push(code), by, page);
  let now = 1000;
  for (const key of keys) {
    const pause = /^\d+ ms$/.exec(key);
    if (pause) {
      now += Number.parseInt(key, 10);
      vi.advanceTimersByTime(Number.parseInt(key, 10));
      continue;
    }
    now += gap;
    listener({
      key,
      target,
      timeStamp: now,
      preventDefault: () => {
        taken += 1;
      },
      stopPropagation: () => undefined,
    } as unknown as KeyboardEvent); // as much of an event as is looked at
    vi.advanceTimersByTime(gap);
  }
  vi.advanceTimersByTime(500);
  return { codes, taken };
}

const digits = [...'2004100290017'];

describe('a scanner that types', () => {
  test('is heard, and its Enter is taken away', () => {
    expect(typed([...digits, 'Enter'], 8)).toEqual({ codes: ['2004100290017'], taken: 1 });
  });

  test('is heard without an Enter', () => {
    expect(typed(digits, 8)).toEqual({ codes: ['2004100290017'], taken: 0 });
  });

  test('may hold down a shift key', () => {
    expect(typed(['Shift', 'L', 'F', '-', '1', '0', '0', '1', 'Enter'], 8).codes).toEqual([
      'LF-1001',
    ]);
  });

  test('is not a hand, whose Enter goes where it was meant', () => {
    expect(typed([...digits, 'Enter'], 120)).toEqual({ codes: [], taken: 0 });
  });

  test('is not a short burst of keys', () => {
    expect(typed([...'123', 'Enter'], 8)).toEqual({ codes: [], taken: 0 });
  });
});

describe('a wrench that types', () => {
  const reading = [...'5.02 N.m'];

  test.each<[situation: string, keys: readonly string[], heard: readonly string[]]>([
    ['with Enter after it', [...reading, 'Enter'], ['5.02 N.m']],
    ['with Tab after it', [...reading, 'Tab'], ['5.02 N.m']],
    ['with nothing after it', reading, ['5.02 N.m']],
    ['with a sign and a shift key', ['Shift', '+', ...'005.0 Nm', 'Enter'], ['+005.0 Nm']],
    ['that is short', [...'5,0', 'Enter'], ['5,0']],
    ['twice', [...'5.0', 'Enter', '900 ms', ...'5.1', 'Enter'], ['5.0', '5.1']],
  ])('is heard %s', (_, keys, heard) => {
    expect(typed(keys, 8, 'wrench').codes).toEqual(heard);
  });

  test('presses nothing: every key after the first is taken away, its end too', () => {
    expect(typed([...reading, 'Enter'], 8, 'wrench').taken).toBe(reading.length);
    expect(typed([...reading, 'Tab'], 8, 'wrench').taken).toBe(reading.length);
  });

  test('presses nothing with an Enter that comes late, or after a single key', () => {
    expect(typed([...reading, '180 ms', 'Enter'], 8, 'wrench')).toEqual({
      codes: ['5.02 N.m'],
      taken: reading.length,
    });
    expect(typed(['5', 'Enter'], 8, 'wrench')).toEqual({ codes: [], taken: 1 });
  });

  test('is not a hand: neither its keys nor its Enter are touched', () => {
    expect(typed([...reading, 'Enter'], 120, 'wrench')).toEqual({ codes: [], taken: 0 });
    expect(typed([...reading, '2000 ms', 'Enter'], 8, 'wrench').taken).toBe(reading.length - 1);
  });

  test.each([
    ['a field', { tagName: 'INPUT', type: 'text' }],
    ['many lines', { tagName: 'TEXTAREA' }],
    ['a list', { tagName: 'SELECT' }],
    ['written text', { tagName: 'DIV', isContentEditable: true }],
  ])('leaves what is typed into %s alone', (_, target) => {
    expect(typed([...reading, 'Enter'], 8, 'wrench', target)).toEqual({ codes: [], taken: 0 });
  });

  test.each([
    ['a button', { tagName: 'BUTTON' }],
    ['a choice', { tagName: 'INPUT', type: 'radio' }],
    ['the page', null],
  ])('is heard while %s has the focus', (_, target) => {
    expect(typed([...reading, 'Enter'], 8, 'wrench', target).codes).toEqual(['5.02 N.m']);
  });

  test('types into nothing once nobody listens', () => {
    const removed: string[] = [];
    const page = {
      addEventListener: () => undefined,
      removeEventListener: (kind: string) => removed.push(kind),
    } as unknown as Document; // only these two are used
    onScannedCode(() => undefined, 'wrench', page)();
    expect(removed).toEqual(['keydown']);
  });
});

test('pictures are read only where the browser can', async () => {
  expect(createPictureScanner({})).toBeUndefined();
  class Detector {
    async detect() {
      return [{ rawValue: '2004100290017' }];
    }
  }
  const scanner = createPictureScanner({ BarcodeDetector: Detector });
  expect(await scanner?.codesIn({} as ImageBitmap)).toEqual(['2004100290017']);
});
