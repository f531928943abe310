/** The inflation window, and suggestions inside it. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inflationWindow, type Rim, suggestInflation, type Tyre } from '../../../src/engine/tyres';
import { kilograms, kilopascals, millimetres } from '../../../src/engine/units';

const kPa = kilopascals;
const anyPressure = fc.integer({ min: 50, max: 1200 }).map(kPa);

describe('inflationWindow', () => {
  test.each<[situation: string, tyre: Pick<Tyre, 'min' | 'max'>, rim: Rim, window: object]>([
    [
      'the tyre limits',
      { min: kPa(300), max: kPa(450) },
      { max: kPa(600) },
      { min: 300, max: 450, limitedBy: 'tyre' },
    ],
    [
      'the rim limits',
      { min: kPa(300), max: kPa(450) },
      { max: kPa(400) },
      { min: 300, max: 400, limitedBy: 'rim' },
    ],
    [
      'a hookless rim limits',
      { min: kPa(400), max: kPa(700) },
      { hookless: true },
      { min: 400, max: 500, limitedBy: 'hookless' },
    ],
    [
      'the rim limits below the hookless ceiling',
      { max: kPa(700) },
      { hookless: true, max: kPa(450) },
      { max: 450, limitedBy: 'rim' },
    ],
    [
      'the tyre limits on a hookless rim',
      { max: kPa(250) },
      { hookless: true },
      { max: 250, limitedBy: 'tyre' },
    ],
    ['equal limits are the tyre’s', { max: kPa(400) }, { max: kPa(400) }, { limitedBy: 'tyre' }],
    [
      'one pressure is left',
      { min: kPa(400), max: kPa(500) },
      { max: kPa(400) },
      { min: 400, max: 400 },
    ],
    [
      'a rim with hooks has no ceiling of its own',
      { max: kPa(800) },
      { hookless: false },
      { max: 800 },
    ],
  ])('[Y7] %s', (_, tyre, rim, window) => {
    expect(inflationWindow({ tyre, rim })).toMatchObject({ ok: true, value: window });
  });

  test('[Y8] without the tyre’s maximum there is no window, whatever the rim allows', () => {
    const rim = { max: kPa(400), hookless: true };
    expect(inflationWindow({ tyre: { min: kPa(200) }, rim })).toEqual({
      ok: false,
      refusal: { code: 'tyre-maximum-unknown' },
    });
  });

  test('[Y8] a tyre that asks for more than the rim allows is refused with both', () => {
    const tyre = { min: kPa(550), max: kPa(800) };
    expect(inflationWindow({ tyre, rim: { hookless: true } })).toEqual({
      ok: false,
      refusal: { code: 'inflation-window-empty', min: 550, max: 500, limitedBy: 'hookless' },
    });
  });

  test('[Y7] the ceiling is never above any limit that applies', () => {
    fc.assert(
      fc.property(anyPressure, fc.option(anyPressure), fc.boolean(), (max, rimMax, hookless) => {
        const rim = { hookless, ...(rimMax !== null && { max: rimMax }) };
        const answer = inflationWindow({ tyre: { max }, rim });
        const limits = [max, ...(rimMax === null ? [] : [rimMax]), ...(hookless ? [500] : [])];
        expect(answer.ok && answer.value.max).toBe(Math.min(...limits));
      }),
    );
  });
});

describe('suggestInflation', () => {
  const anyWindow = fc
    .tuple(anyPressure, anyPressure)
    .map(([a, b]) => ({ min: kPa(Math.min(a, b)), max: kPa(Math.max(a, b)) }));
  const anyWidth = fc.integer({ min: 18, max: 130 }).map(millimetres);
  const anyLoad = fc.integer({ min: 5, max: 150 }).map(kilograms);
  const open = { min: kPa(0), max: kPa(1e6) };

  test('[Y9] a suggestion stays in the window', () => {
    fc.assert(
      fc.property(anyWindow, anyWidth, fc.option(anyLoad), (window, width, load) => {
        const wheelLoad = load ?? undefined;
        const suggested = suggestInflation({ window, width, wheelLoad });
        expect(suggested).toBeGreaterThanOrEqual(window.min);
        expect(suggested).toBeLessThanOrEqual(window.max);
      }),
    );
  });

  test('[Y10] no load: the middle; no load and no lower end: nothing', () => {
    const width = millimetres(57);
    expect(suggestInflation({ window: { min: kPa(200), max: kPa(400) }, width })).toBe(300);
    expect(suggestInflation({ window: { max: kPa(400) }, width })).toBeUndefined();
  });

  test('[Y11] a load and no lower end: still the pressure of the load', () => {
    const window = { max: kPa(600) };
    const asked = { window, width: millimetres(37), wheelLoad: kilograms(45) };
    expect(suggestInflation(asked)).toBeGreaterThan(250);
    expect(suggestInflation(asked)).toBeLessThan(400);
  });

  test('[Y11] more load never asks for less', () => {
    fc.assert(
      fc.property(anyWidth, anyLoad, anyLoad, (width, a, b) => {
        const suggest = (wheelLoad: typeof a) =>
          suggestInflation({ window: open, width, wheelLoad }) ?? Number.NaN;
        const [light, heavy] = a < b ? [a, b] : [b, a];
        expect(suggest(heavy)).toBeGreaterThanOrEqual(suggest(light));
      }),
    );
  });

  test('[Y11] a wider tyre never asks for more', () => {
    fc.assert(
      fc.property(anyWidth, anyWidth, anyLoad, (a, b, wheelLoad) => {
        const suggest = (width: typeof a) =>
          suggestInflation({ window: open, width, wheelLoad }) ?? Number.NaN;
        const [narrow, wide] = a < b ? [a, b] : [b, a];
        expect(suggest(wide)).toBeLessThanOrEqual(suggest(narrow));
      }),
    );
  });
});
