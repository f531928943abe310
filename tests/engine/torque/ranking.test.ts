/** The tool board in order, for a figure. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rankWrenches } from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

const faceplate = { min: newtonMetres(4), max: newtonMetres(6) };

const small = wrench({ id: 'small', lowest: 1, highest: 10, increment: 0.1 });
const middle = wrench({ id: 'middle' });
const large = wrench({ id: 'large', lowest: 20, highest: 120, increment: 1 });
const preset = wrench({ id: 'preset', class: 'B', lowest: 5, highest: 5, increment: 1 });
const beam = wrench({ id: 'beam', type: 'I', class: 'A', lowest: 4, highest: 20, increment: 2 });
const dropped = wrench({ id: 'dropped', condition: 'dropped' });
const overdue = wrench({ id: 'overdue', dueOn: '2026-01-01' });
const board = [large, dropped, preset, overdue, beam, middle, small];

const idsOf = (ranked: ReturnType<typeof rankWrenches>) => ranked.map(({ wrench: { id } }) => id);

describe('rankWrenches', () => {
  // all set 5 but the beam, set 6 or 4, and leave ample room; a preset tool is in the middle of its scale, 5 is low on 2–25
  test('[T16] those that can come first, by room inside the figure, then by place on the scale', () => {
    const ranked = rankWrenches(faceplate, board, TODAY);
    expect(idsOf(ranked)).toEqual([
      'preset',
      'small',
      'middle',
      'beam',
      'dropped',
      'large',
      'overdue',
    ]);
    expect(ranked.map(({ plan }) => plan?.onScale)).toEqual([
      5,
      5,
      5,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('[T16] each says why it stands where it stands', () => {
    const ranked = rankWrenches(faceplate, board, TODAY);
    const reasons = Object.fromEntries(ranked.map((one) => [one.wrench.id, one.reasons]));
    expect(reasons).toEqual({
      middle: ['keeps-the-joint-inside', 'middle-of-its-scale'],
      preset: ['keeps-the-joint-inside', 'set-once-for-all'],
      small: ['keeps-the-joint-inside', 'middle-of-its-scale'],
      beam: ['wrench-too-coarse'],
      dropped: ['wrench-not-in-service'],
      large: ['figure-outside-wrench-range'],
      overdue: ['calibration-overdue'],
    });
    expect(ranked.map(({ refusal }) => refusal?.code)).toEqual([
      undefined,
      undefined,
      undefined,
      'wrench-too-coarse',
      'wrench-not-in-service',
      'figure-outside-wrench-range',
      'calibration-overdue',
    ]);
  });

  test('[T16] the end of a scale and the last day are told', () => {
    const atTheEnd = wrench({ id: 'end', lowest: 4, highest: 25, dueOn: TODAY });
    const [ranked] = rankWrenches(faceplate, [atTheEnd], TODAY);
    expect(ranked?.reasons).toEqual([
      'keeps-the-joint-inside',
      'near-the-end-of-its-scale',
      'due-today',
    ]);
  });

  test.each<[situation: string, figure: object, best: string]>([
    ['a maximum: the one that comes nearest under it', { max: newtonMetres(5) }, 'small'],
    ['a minimum: the one that stays nearest over it', { min: newtonMetres(5) }, 'small'],
    ['a single value: one made for it', { target: newtonMetres(5) }, 'preset'],
    ['a narrow range: room before place', { min: newtonMetres(5), max: newtonMetres(6) }, 'middle'],
    ['a high figure', { min: newtonMetres(35), max: newtonMetres(40) }, 'large'],
  ])('[T16] %s', (_, figure, best) => {
    expect(idsOf(rankWrenches(figure, board, TODAY))[0]).toBe(best);
  });

  describe('the unit that is printed', () => {
    const inches = wrench({ id: 'inches', unit: 'lbf·in', lowest: 20, highest: 70, increment: 1 });
    const metric = wrench({ id: 'metric', lowest: 2, highest: 14, increment: 0.5 });
    const marked = (printed: string) => ({
      ...faceplate,
      source: { kind: 'part', printed } as const,
    });
    const best = (figure: Parameters<typeof rankWrenches>[0]) =>
      idsOf(rankWrenches(figure, [inches, metric], TODAY))[0];

    // 44 lbf·in is 4.971 N·m ± 6 %, the metric one is set to 5 ± 4 %: each leaves over a quarter of the range
    test('[T16] a wrench in another unit is not preferred for a sliver of room', () => {
      expect(best(faceplate)).toBe('metric');
      expect(best(marked('4-6 Nm'))).toBe('metric');
      expect(best(marked('who knows'))).toBe('metric');
      expect(best({ ...faceplate, source: { kind: 'usual' } })).toBe('metric');
      const [, other] = rankWrenches(faceplate, [inches, metric], TODAY);
      expect(other?.reasons).toEqual([
        'keeps-the-joint-inside',
        'middle-of-its-scale',
        'in-another-unit',
      ]);
    });

    test('[T16] where the part is marked in that unit it is', () => {
      expect(best(marked('35-53 in-lb'))).toBe('inches');
      const both = rankWrenches(marked('4-6 Nm (35-53 in-lb)'), [inches, metric], TODAY);
      expect(both.every(({ reasons }) => !reasons.includes('in-another-unit'))).toBe(true);
    });

    test('[T16] room that is worth something comes before the unit', () => {
      const narrow = { min: newtonMetres(5.25), max: newtonMetres(6) };
      const fine = wrench({
        id: 'fine',
        unit: 'lbf·in',
        lowest: 20,
        highest: 170,
        increment: 1,
        certificate: { deviation: 0.01 },
      });
      const ranked = rankWrenches(narrow, [metric, fine], TODAY);
      expect(idsOf(ranked)).toEqual(['fine', 'metric']);
      expect(ranked[1]?.reasons).toEqual([
        'keeps-the-joint-inside',
        'middle-of-its-scale',
        'little-room',
      ]);
    });
  });

  test('[T16] alike in all else, the id decides', () => {
    const twins = [wrench({ id: 'b' }), wrench({ id: 'a' }), wrench({ id: 'c' })];
    expect(idsOf(rankWrenches(faceplate, twins, TODAY))).toEqual(['a', 'b', 'c']);
  });

  test('[T16] of those that cannot, the least risky comes first', () => {
    const narrow = { min: newtonMetres(5), max: newtonMetres(5.3) };
    const wide = wrench({ id: 'a', type: 'I', class: 'A', increment: 0.1 });
    const finer = wrench({ id: 'b', increment: 0.1 });
    const [first, second] = rankWrenches(narrow, [wide, finer], TODAY);
    expect([first?.wrench.id, second?.wrench.id]).toEqual(['b', 'a']);
  });

  test('[T7, T16] an adapter counts', () => {
    const inLine = { grip: millimetres(100), offset: millimetres(100), angle: 0 };
    const [ranked] = rankWrenches(faceplate, [middle], TODAY, inLine);
    expect(ranked?.plan?.setPoint).toBe(2.5);
  });

  test('[T16] the order they are given in does not matter', () => {
    const figures = fc.constantFrom(
      faceplate,
      { max: newtonMetres(5) },
      { min: newtonMetres(5) },
      { target: newtonMetres(22) },
      {},
    );
    fc.assert(
      fc.property(
        fc.shuffledSubarray(board, { minLength: board.length }),
        figures,
        (shuffled, figure) => {
          expect(rankWrenches(figure, shuffled, TODAY)).toEqual(rankWrenches(figure, board, TODAY));
        },
      ),
    );
  });
});
