/** Where ample room ends and little begins, told by wrenches that have one setting and a known deviation. */

import { describe, expect, test } from 'vitest';
import { rankWrenches, type Wrench } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

/** Set to one value and out by ± a share at most: the joint ends from set / (1 + share) to set / (1 − share). */
function preset(set: number, deviation: number, own: Partial<Wrench> = {}): Wrench {
  const certificate = { deviation };
  return wrench({ class: 'B', lowest: set, highest: set, increment: 1, certificate, ...own });
}

const idsOf = (ranked: ReturnType<typeof rankWrenches>) => ranked.map(({ wrench: { id } }) => id);

describe('rankWrenches', () => {
  const [four, six, ten] = [newtonMetres(4), newtonMetres(6), newtonMetres(10)];
  const between = { min: four, max: six };

  // a tenth of a range, a fifth of one limit or of a single value: common practice, no source
  test.each<[situation: string, figure: object, set: number, deviation: number, isLittle: boolean]>(
    [
      ['a range, 0.4 of it left', between, 5, 0.04, false],
      ['a range, 0.12 of it left below', between, 4.4, 0.04, false],
      ['a range, 0.08 of it left below', between, 4.32, 0.04, true],
      ['a range, 0.03 of it left above', between, 5.7, 0.04, true],
      ['at most ten, 8.12 at the least', { max: ten }, 8.2, 0.01, false],
      ['at most ten, 7.92 at the least', { max: ten }, 8, 0.01, true],
      ['at least ten, 11.62 at the most', { min: ten }, 11.5, 0.01, false],
      ['at least ten, 12.63 at the most', { min: ten }, 12.5, 0.01, true],
      ['just ten, 8.70 to 11.76', { target: ten }, 10, 0.15, false],
      ['just ten, 8.47 to 12.20', { target: ten }, 10, 0.18, true],
      ['from ten to ten, 9.52 to 10.53', { min: ten, max: ten }, 10, 0.05, false],
    ],
  )('[T16] %s', (_, figure, set, deviation, isLittle) => {
    const [only] = rankWrenches(figure, [preset(set, deviation)], TODAY);
    expect(only?.reasons).toEqual([
      'keeps-the-joint-inside',
      'set-once-for-all',
      ...(isLittle ? ['little-room'] : []),
    ]);
  });

  test('[T16] a single value is strayed from at worst, to either side', () => {
    const coarse = { lowest: 6, highest: 12, increment: 3, certificate: { deviation: 0.2 } };
    const [only] = rankWrenches({ target: ten }, [wrench(coarse)], TODAY);
    expect(only?.plan).toMatchObject({ onScale: 9, jointLow: 7.5, jointHigh: 11.25 });
    expect(only?.reasons).toContain('little-room');
  });

  test('[T16] straying by a tenth at most is better than the printed unit, and than straying further', () => {
    const near = preset(85, 0.01, { id: 'near', unit: 'lbf·in' }); // 9.60 N·m, 9.51 at the least
    const far = preset(9, 0.01, { id: 'far' });
    const further = preset(8, 0.01, { id: 'further' });
    expect(idsOf(rankWrenches({ max: ten }, [further, far, near], TODAY))).toEqual([
      'near',
      'far',
      'further',
    ]);
  });

  test('[T16] alike in all else, more room comes before the id', () => {
    const twins = [preset(5, 0.02, { id: 'a' }), preset(5, 0.01, { id: 'b' })];
    expect(idsOf(rankWrenches(between, twins, TODAY))).toEqual(['b', 'a']);
  });

  test.each<[highest: number, reason: string]>([
    [11, 'middle-of-its-scale'],
    [10.9, 'near-the-end-of-its-scale'],
  ])('[T16] ten on a scale from 1 to %d: %s', (highest, reason) => {
    const scale = wrench({ lowest: 1, highest, increment: 1, certificate: { deviation: 0.01 } });
    const figure = { min: newtonMetres(9.5), max: newtonMetres(10.5) };
    const [only] = rankWrenches(figure, [scale], TODAY);
    expect(only?.plan?.onScale).toBe(10);
    expect(only?.reasons).toContain(reason);
  });
});
