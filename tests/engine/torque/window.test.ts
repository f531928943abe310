/** From where to where a wrench may be set. */

import { describe, expect, test } from 'vitest';
import type { Demand } from '../../../src/engine/torque/demand';
import { plusMinus } from '../../../src/engine/torque/deviation-curve';
import { printedLimits, settingWindow, wantedSetting } from '../../../src/engine/torque/window';
import { newtonMetres } from '../../../src/engine/units';

const five = newtonMetres(5);
const six = newtonMetres(6);

const stretch = { from: 0, to: Infinity, atFrom: plusMinus(0.04), atTo: plusMinus(0.04) };

describe('settingWindow', () => {
  // by hand from set/(1 + a) and set/(1 − a), a = 4 %
  test.each<[demand: Demand, factor: number, from: number, to: number, wanted: number]>([
    [{ kind: 'range', min: newtonMetres(4), max: six, target: five }, 1, 4.16, 5.76, 5],
    [{ kind: 'range', min: newtonMetres(4), max: six, target: five }, 2, 2.08, 2.88, 2.5],
    [{ kind: 'maximum', max: six }, 1, 4, 5.76, 5.76],
    [{ kind: 'maximum', max: six }, 0.5, 8, 11.52, 11.52],
    [{ kind: 'minimum', min: six }, 1, 6.24, 9, 6.24],
    [{ kind: 'minimum', min: six }, 2, 3.12, 4.5, 3.12],
    [{ kind: 'single', target: five }, 1, 4.8, 5.2, 5],
    [{ kind: 'single', target: five, max: newtonMetres(5.2) }, 1, 4.8, 4.992, 4.992],
    [{ kind: 'single', target: five, min: newtonMetres(4.9) }, 1, 5.096, 5.2, 5.096],
  ])('[T9] %o with factor %d', (demand, factor, from, to, wanted) => {
    const task = { demand, factor, tolerance: 0.04 };
    const window = settingWindow(task, stretch);
    expect(window.from).toBeCloseTo(from, 9);
    expect(window.to).toBeCloseTo(to, 9);
    expect(wantedSetting(task, stretch, window)).toBeCloseTo(wanted, 9);
  });
});

describe('printedLimits', () => {
  test('[T9] an end that is not printed is open', () => {
    expect(printedLimits({ kind: 'maximum', max: six })).toEqual({ min: 0, max: 6 });
    expect(printedLimits({ kind: 'minimum', min: six })).toEqual({ min: 6, max: Infinity });
    expect(printedLimits({ kind: 'single', target: five })).toEqual({ min: 0, max: Infinity });
    const range: Demand = { kind: 'range', min: five, max: six, target: five };
    expect(printedLimits(range)).toEqual({ min: 5, max: 6 });
  });
});
