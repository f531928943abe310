/** Whether a split clamp closes evenly: its gaps, measured where it is open, against each other. */

import { ok, type Result, refuse } from '../base';
import type { Millimetres } from '../units';
import type { ReadingVerdict } from './reading';

export type GapsJudged = {
  readonly verdict: ReadingVerdict;
  /** The widest gap less the narrowest, mm. */
  readonly spread: number;
  /** Which of the gaps as given, from 1; the first of those alike. */
  readonly widest: number;
  readonly narrowest: number;
};

/** mm by which gaps that look even differ at most. Common practice, no source; the maker's own figure comes before it. */
export const EVEN_WITHIN = 0.5;

/**
 * Inside when the gaps of a clamp (mm, two or more, in any order) differ by at most `within`, the limit itself still even.
 * Each may be wrong by `uncertainty` (mm): even only when they surely are, uneven only when they surely are not, undecided
 * between (guard band of ISO 14253-1). Refuses fewer than two gaps and a length that cannot be. A clamp whose maker closes
 * one side first is not judged by this.
 */
export function judgeGaps(
  gaps: readonly Millimetres[],
  { within = EVEN_WITHIN, uncertainty = 0 }: { within?: number; uncertainty?: number } = {},
): Result<GapsJudged, GapsImpossible> {
  if (gaps.length < 2) return impossible('too-few');
  if (![...gaps, within, uncertainty].every((length) => length >= 0 && Number.isFinite(length))) {
    return impossible('length');
  }
  const lengths: readonly number[] = gaps;
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  const spread = most - least;
  const verdict = verdictFor(spread, within, 2 * uncertainty);
  const place = (length: number) => lengths.indexOf(length) + 1;
  return ok({ verdict, spread, widest: place(most), narrowest: place(least) });
}

export type GapsImpossible = {
  readonly code: 'gaps-impossible';
  readonly because: 'too-few' | 'length';
};

function impossible(because: GapsImpossible['because']) {
  return refuse<GapsImpossible>({ code: 'gaps-impossible', because });
}

function verdictFor(spread: number, within: number, guard: number): ReadingVerdict {
  if (spread > within + guard + DUST) return 'outside';
  return spread <= within - guard + DUST ? 'inside' : 'undecided';
}

const DUST = 1e-9;
