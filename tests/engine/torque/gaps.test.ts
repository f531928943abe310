/** Gaps of split clamps; half a millimetre is common practice, no source. */

import { describe, expect, test } from 'vitest';
import { EVEN_WITHIN, type GapsJudged, judgeGaps } from '../../../src/engine/torque';
import { millimetres } from '../../../src/engine/units';

const mm = (...lengths: readonly number[]) => lengths.map(millimetres);

describe('judgeGaps', () => {
  test.each<[gaps: number[], options: { within?: number; uncertainty?: number }, GapsJudged]>([
    [[3, 3], {}, { verdict: 'inside', spread: 0, widest: 1, narrowest: 1 }],
    [[3, 3.5], {}, { verdict: 'inside', spread: 0.5, widest: 2, narrowest: 1 }],
    [[3.6, 3], {}, { verdict: 'outside', spread: 0.6, widest: 1, narrowest: 2 }],
    [[3, 0], {}, { verdict: 'outside', spread: 3, widest: 1, narrowest: 2 }],
    [[2.9, 3.1, 3.3, 3], {}, { verdict: 'inside', spread: 0.4, widest: 3, narrowest: 1 }],
    [[3, 3.25], { within: 0.2 }, { verdict: 'outside', spread: 0.25, widest: 2, narrowest: 1 }],
    [[3, 3.3], { uncertainty: 0.1 }, { verdict: 'inside', spread: 0.3, widest: 2, narrowest: 1 }],
    [
      [3, 3.4],
      { uncertainty: 0.1 },
      { verdict: 'undecided', spread: 0.4, widest: 2, narrowest: 1 },
    ],
    [
      [3, 3.7],
      { uncertainty: 0.1 },
      { verdict: 'undecided', spread: 0.7, widest: 2, narrowest: 1 },
    ],
    [[3, 3.8], { uncertainty: 0.1 }, { verdict: 'outside', spread: 0.8, widest: 2, narrowest: 1 }],
  ])('[T31] gaps of %o mm with %o', (gaps, options, judged) => {
    const answer = judgeGaps(mm(...gaps), options);
    if (!answer.ok) throw new Error(answer.refusal.because);
    expect(answer.value).toEqual({ ...judged, spread: expect.closeTo(judged.spread, 9) });
  });

  test('[T31] half a millimetre is the limit unless another is stated', () => {
    expect(EVEN_WITHIN).toBe(0.5);
  });

  test.each<
    [
      situation: string,
      gaps: number[],
      options: { within?: number; uncertainty?: number },
      because: string,
    ]
  >([
    ['one gap', [3], {}, 'too-few'],
    ['none', [], {}, 'too-few'],
    ['a gap below nothing', [3, -1], {}, 'length'],
    ['no limit', [3, 3], { within: Number.NaN }, 'length'],
    ['an endless limit', [3, 3], { within: Infinity }, 'length'],
    ['an uncertainty below nothing', [3, 3], { uncertainty: -0.1 }, 'length'],
  ])('[T31] %s is refused', (_, gaps, options, because) => {
    expect(judgeGaps(mm(...gaps), options)).toEqual({
      ok: false,
      refusal: { code: 'gaps-impossible', because },
    });
  });
});
