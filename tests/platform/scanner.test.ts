/** A scanner types faster than a hand; what a hand types is left alone, and a scan never presses a button. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createPictureScanner, onScannedCode } from '../../src/platform/scanner';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Keys that arrive so many milliseconds after each other; answers the codes heard and the Enters taken away. */
function typed(keys: readonly string[], gap: number): { codes: string[]; taken: number } {
  let listener: (event: KeyboardEvent) => void = () => undefined;
  const page = {
    addEventListener: (_: string, heard: (event: KeyboardEvent) => void) => {
      listener = heard;
    },
    removeEventListener: () => undefined,
  } as unknown as Document; // only these two are used
  const codes: string[] = [];
  let taken = 0;
  onScannedCode((code) => codes.push(code), page);
  for (const [index, key] of keys.entries()) {
    listener({
      key,
      timeStamp: 1000 + index * gap,
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
