/** Settings along a curve that climbs or falls, worked out by hand from setting × factor / (1 + deviation). */

import { describe, expect, test } from 'vitest';
import type { Demand } from '../../../src/engine/torque/demand';
import { plusMinus, type Stretch } from '../../../src/engine/torque/deviation-curve';
import { settingWindow, turningPoints, wantedSetting } from '../../../src/engine/torque/window';
import { newtonMetres } from '../../../src/engine/units';

/** From 0 ± 2 % at 4 N·m to 8 ± 2 % at 24 N·m, and the other way round. */
const rising = curve({ low: -0.02, high: 0.02 }, { low: 0.06, high: 0.1 });
const falling = curve({ low: 0.06, high: 0.1 }, { low: -0.02, high: 0.02 });

const range = rangeOf(9, 11);

function curve(atFrom: Stretch['atFrom'], atTo: Stretch['atTo']): Stretch {
  return { from: 4, to: 24, atFrom, atTo };
}

function rangeOf(min: number, max: number): Demand {
  const target = newtonMetres((min + max) / 2);
  return { kind: 'range', min: newtonMetres(min), max: newtonMetres(max), target };
}

describe('settingWindow', () => {
  // rising: s ≥ 9 (1.004 + 0.004 s), s ≤ 11 (0.964 + 0.004 s), s = 10 (0.984 + 0.004 s); falling: 1.116, 1.076, 1.096, −0.004 s
  test.each<[situation: string, Stretch, factor: number, from: number, to: number, wanted: number]>(
    [
      ['rising', rising, 1, 9.036 / 0.964, 10.604 / 0.956, 9.84 / 0.96],
      ['rising, doubled', rising, 2, 9.036 / 1.964, 10.604 / 1.956, 9.84 / 1.96],
      ['falling', falling, 1, 10.044 / 1.036, 11.836 / 1.044, 10.96 / 1.04],
      ['falling, doubled', falling, 2, 10.044 / 2.036, 11.836 / 2.044, 10.96 / 2.04],
    ],
  )('[T9, T10] %s', (_, stretch, factor, from, to, wanted) => {
    const task = { demand: range, factor, tolerance: 0.04 };
    const window = settingWindow(task, stretch);
    expect(window.from).toBeCloseTo(from, 9);
    expect(window.to).toBeCloseTo(to, 9);
    expect(wantedSetting(task, stretch, window)).toBeCloseTo(wanted, 9);
  });

  test('[T9] a window does not leave its stretch', () => {
    const task = { factor: 1, tolerance: 0.04 };
    expect(settingWindow({ ...task, demand: rangeOf(20, 40) }, rising).to).toBe(24);
    expect(settingWindow({ ...task, demand: rangeOf(1, 8) }, rising).from).toBe(4);
  });

  // at 1/64 a newton metre the deviation grows as fast as the setting once 64 N·m are asked for
  test.each<[demand: Demand, from: number, to: number]>([
    [{ kind: 'minimum', min: newtonMetres(64) }, Infinity, 0],
    [{ kind: 'minimum', min: newtonMetres(128) }, 0, -128],
    [{ kind: 'maximum', max: newtonMetres(64) }, (64 * 2) / 3, 16],
  ])('[T9] a curve as steep as it could be: %o', (demand, from, to) => {
    const steep: Stretch = {
      from: 0,
      to: 16,
      atFrom: plusMinus(0),
      atTo: { low: 0.25, high: 0.25 },
    };
    const window = settingWindow({ demand, factor: 1, tolerance: 0 }, steep);
    expect(window.from).toBeCloseTo(from, 9);
    expect(window.to).toBeCloseTo(to, 9);
  });
});

describe('turningPoints', () => {
  test.each<[demand: Demand, points: readonly number[]]>([
    [range, [9, 9.036 / 0.964, 10.604 / 0.956, 11.044 / 0.956, 4, 24]],
    [{ kind: 'maximum', max: newtonMetres(11) }, [10.604 / 0.956, 11.044 / 0.956, 4, 24]],
    [{ kind: 'minimum', min: newtonMetres(9) }, [9, 9.036 / 0.964, 4, 24]],
    [{ kind: 'single', target: newtonMetres(10) }, [9.84 / 0.96, 4, 24]],
    [rangeOf(2, 40), [4, 4, 24, 24, 4, 24]],
  ])(
    '[T14] the risk of %o may turn where an end meets a limit, or the stretch ends',
    (demand, points) => {
      const found = turningPoints({ demand, factor: 1, tolerance: 0.04 }, rising);
      expect(found).toEqual(points.map((point) => expect.closeTo(point, 9)));
    },
  );

  test('[T14] a stretch without an end has none to turn at', () => {
    const endless: Stretch = {
      from: 0,
      to: Infinity,
      atFrom: plusMinus(0.04),
      atTo: plusMinus(0.04),
    };
    const task = { demand: range, factor: 1, tolerance: 0.04 };
    expect(turningPoints(task, endless)).toEqual([
      ...[8.64, 9.36, 10.56, 11.44].map((point) => expect.closeTo(point, 9)),
      0,
    ]);
  });
});
