/** Wrong PINs slow down, for one person at a time, across reloads and clocks, and lock nobody out for good. */

import { describe, expect, test } from 'vitest';
import { createKeys } from '../../src/platform/keys';
import { createPinWaits, waitAfter, waitLeft } from '../../src/platform/pin-waits';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';

const right = '274913';
const wrong = '274914';

describe('the wait', () => {
  test('comes with the third wrong PIN, doubles, and stops growing at a quarter of an hour', () => {
    const seconds = Array.from({ length: 12 }, (_, count) => waitAfter(count) / 1000);
    expect(seconds).toEqual([0, 0, 0, 30, 60, 120, 240, 480, 900, 900, 900, 900]);
    // Six digits are a million PINs: at four an hour that is more than a quarter of a century.
    const years = 1_000_000 / (3600 / (waitAfter(1000) / 1000)) / 24 / 365;
    expect(years).toBeGreaterThan(25);
  });

  test.each<[situation: string, since: number, left: number]>([
    ['at once', 0, 30_000],
    ['half-way', 15_000, 15_000],
    ['over', 30_000, 0],
    ['long over', 86_400_000, 0],
    ['with a clock set back by a year', -31_536_000_000, 30_000],
  ])('is %s: %i ms later %i ms are left', (_, since, left) => {
    const last = 1_764_000_000_000;
    expect(waitLeft({ wrong: 3, last }, last + since)).toBe(left);
  });

  test('ends by a clock that was set back, too', async () => {
    const { keys } = createMemoryStorage();
    let now = 1_764_000_000_000;
    const waits = createPinWaits(keys, () => now);
    for (let tries = 0; tries < 3; tries += 1) await waits.begin('noor');
    now -= 31_536_000_000;
    expect(await waits.begin('noor')).toBe(30);
    now += 29_000;
    expect(await waits.begin('noor')).toBe(1);
    now += 1000;
    expect(await waits.begin('noor')).toBe(0);
  });
});

describe('a PIN typed wrong', () => {
  test('waits after the third, the right one too, also after a reload, and only for that person', async () => {
    const shelf = createMemoryStorage().keys;
    let now = 1_764_000_000_000;
    const keys = createKeys(shelf, () => now);
    await keys.createFor('noor', right);
    await keys.createFor('petra', '917582');
    const refused = async (pin: string) => {
      const signed = await createKeys(shelf, () => now).signAs('noor', pin, {});
      return signed.ok ? 'signed' : signed.refusal;
    };
    expect(await refused(wrong)).toEqual({ code: 'pin-wrong' });
    expect(await refused(wrong)).toEqual({ code: 'pin-wrong' });
    expect(await refused(wrong)).toEqual({ code: 'pin-wrong', seconds: 30 });
    expect(await refused(right)).toEqual({ code: 'pin-waits', seconds: 30 });
    expect((await keys.isPinOf('petra', '917582')).ok).toBe(true);
    now += 30_000;
    expect(await refused(wrong)).toEqual({ code: 'pin-wrong', seconds: 60 });
    now += 60_000;
    expect(await refused(right)).toBe('signed');
    // In a row only: the right one has ended it.
    expect(await refused(wrong)).toEqual({ code: 'pin-wrong' });
  }, 60_000);

  test('is counted before it is looked at: a page closed in the middle gains nothing', async () => {
    const shelf = createMemoryStorage().keys;
    const waits = createPinWaits(shelf, () => 1_764_000_000_000);
    for (let tries = 0; tries < 3; tries += 1) expect(await waits.begin('noor')).toBe(0);
    // None of the three has been answered.
    expect(await waits.begin('noor')).toBe(30);
  });

  test('that could not be looked at does not count', async () => {
    const shelf = createMemoryStorage().keys;
    const waits = createPinWaits(shelf, () => 1_764_000_000_000);
    for (let tries = 0; tries < 9; tries += 1) {
      expect(await waits.begin('noor')).toBe(0);
      await waits.takeBack('noor');
    }
  });

  test('of many tried at once gets no more tries than one after the other', async () => {
    const shelf = createMemoryStorage().keys;
    const now = () => 1_764_000_000_000;
    const tabs = Array.from({ length: 10 }, () => createPinWaits(shelf, now));
    const begun = await Promise.all(tabs.map((waits) => waits.begin('noor')));
    expect(begun.filter((seconds) => seconds === 0)).toHaveLength(3);
  });
});
