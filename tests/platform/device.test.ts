/** What is asked of the browser: to keep, to stay awake, to print, to read a file. */

import { describe, expect, test } from 'vitest';
import { fittedSize } from '../../src/platform/camera';
import { askToKeep, readDurability } from '../../src/platform/durability';
import { readTextFile } from '../../src/platform/files';
import { printPage } from '../../src/platform/print';
import { keepAwake } from '../../src/platform/wake-lock';

describe('durability', () => {
  const estimate = async () => ({ usage: 5, quota: 100 });

  test('is what the browser answers', async () => {
    const manager = { persist: async () => true, persisted: async () => false, estimate };
    expect(await readDurability(manager)).toEqual({
      answer: 'may-be-cleared',
      used: 5,
      allowed: 100,
    });
    expect(await askToKeep(manager)).toEqual({ answer: 'kept', used: 5, allowed: 100 });
  });

  test('is unknown where the browser cannot say, or fails', async () => {
    expect(await readDurability({})).toEqual({ answer: 'unknown' });
    const failing = { persist: () => Promise.reject(new Error('no')) };
    expect(await askToKeep(failing)).toEqual({ answer: 'unknown' });
  });
});

describe('the wake lock', () => {
  test('is taken again when the page is seen again, and given back in the end', async () => {
    let taken = 0;
    let released = 0;
    let seen: () => void = () => undefined;
    const screen = {
      document: {
        visibilityState: 'visible' as const,
        addEventListener: (_: string, heard: () => void) => {
          seen = heard;
        },
        removeEventListener: () => {
          seen = () => undefined;
        },
      },
      navigator: {
        wakeLock: {
          request: async () => {
            taken += 1;
            return {
              release: async () => {
                released += 1;
              },
            };
          },
        },
      },
    } as unknown as Window; // as much of a window as is used
    const stop = keepAwake(screen);
    seen();
    await Promise.resolve();
    await Promise.resolve();
    expect(taken).toBe(2);
    stop();
    seen();
    expect([taken, released]).toEqual([2, 1]);
  });
});

test('printing borrows the title for the file’s name, and gives it back', () => {
  let after = () => {};
  const titles: string[] = [];
  const page = {
    document: { title: 'Standbook' },
    addEventListener: (_: string, heard: () => void) => {
      after = heard;
    },
    print: () => titles.push(page.document.title),
  };
  printPage('Sheet LF-1001', page as unknown as Window); // as much of a window as is used
  after();
  expect([titles, page.document.title]).toEqual([['Sheet LF-1001'], 'Standbook']);
});

test.each([
  ['UTF-8', new TextEncoder().encode('Größe'), { ok: true, value: 'Größe' }],
  ['UTF-16 with its mark', Uint8Array.of(0xff, 0xfe, 0x41, 0, 0xdf, 0), { ok: true, value: 'Aß' }],
  [
    'a picture',
    Uint8Array.of(0xff, 0xd8, 0xff, 0xe0),
    { ok: false, refusal: { code: 'file-not-text' } },
  ],
])('a picked file in %s', async (_, bytes, expected) => {
  expect(await readTextFile(new Blob([bytes]))).toEqual(expected);
});

test.each([
  [4032, 3024, 1600, 1200],
  [3024, 4032, 1200, 1600],
  [800, 600, 800, 600],
])('a photo of %d × %d is kept as %d × %d', (width, height, keptWidth, keptHeight) => {
  expect(fittedSize(width, height)).toEqual({ width: keptWidth, height: keptHeight });
});
