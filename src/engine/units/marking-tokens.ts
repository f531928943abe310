/** Cuts a printed marking into numbers, units and the few words that bind them; anything else is refused. */

import { ok, type Result, refuse } from '../base';

/** A number as printed: `halfStep` is half of its last digit, which is how far rounding may have moved it. */
export type PrintedNumber = { readonly value: number; readonly halfStep: number };

type Piece<Unit extends string> =
  | ({ readonly kind: 'number' } & PrintedNumber)
  | { readonly kind: 'unit'; readonly unit: Unit }
  | { readonly kind: 'bound'; readonly bound: 'min' | 'max' }
  | { readonly kind: 'to' | 'plus-minus' | 'percent' | 'break' };

export type Token<Unit extends string> = Piece<Unit> & {
  readonly start: number;
  readonly end: number;
};

/** How one unit may be spelled: sticky and case-insensitive, tried at the start of a word. */
export type Spelling<Unit extends string> = { readonly unit: Unit; readonly pattern: RegExp };

export type MarkingNotUnderstood = {
  readonly code: 'marking-not-understood';
  readonly text: string;
  /** The part of the text that could not be read. */
  readonly part: string;
};

const number = /\d+(?:[.,]\d+)*|\.\d+/y;
const filler =
  /\s+|\b(?:tightening|torque|inflate\s+to|inflate|inflation|pressure|tyre|tire)\b:?/iy;
const word = /[\p{L}\p{N}.,]*[\p{L}\p{N}]|./uy;

const binders: readonly { readonly pattern: RegExp; readonly piece: Piece<never> }[] = [
  { pattern: /±|\+\s*\/\s*[-–−]|\+-/y, piece: { kind: 'plus-minus' } },
  { pattern: /%/y, piece: { kind: 'percent' } },
  {
    pattern: /≤|<=?|max(?:imum|i)?(?![a-z])\.?|up to\b|do not exceed\b|not to exceed\b/iy,
    piece: { kind: 'bound', bound: 'max' },
  },
  {
    pattern: /≥|>=?|min(?:imum|i)?(?![a-z])\.?|at least\b/iy,
    piece: { kind: 'bound', bound: 'min' },
  },
  { pattern: /[-‐‑‒–—―−~÷∼]|\.{2,3}|(?:to|bis)\b/iy, piece: { kind: 'to' } },
  { pattern: /[()[\]/,;=|:]|or\b/iy, piece: { kind: 'break' } },
];

/** Reads the whole text into tokens, left to right, or refuses with the first part that is none. */
export function tokensOf<Unit extends string>(
  text: string,
  spellings: readonly Spelling<Unit>[],
): Result<readonly Token<Unit>[], MarkingNotUnderstood> {
  const tokens: Token<Unit>[] = [];
  let at = 0;
  while (at < text.length) {
    const skipped = matchAt(filler, text, at);
    if (skipped !== undefined) {
      at += skipped.length;
      continue;
    }
    const found = pieceAt(text, at, spellings);
    if (found === undefined) return notUnderstood(text, matchAt(word, text, at) ?? text.slice(at));
    tokens.push({ ...found.piece, start: at, end: at + found.length });
    at += found.length;
  }
  return ok(tokens);
}

export function notUnderstood(text: string, part: string) {
  return refuse<MarkingNotUnderstood>({ code: 'marking-not-understood', text, part });
}

function pieceAt<Unit extends string>(
  text: string,
  at: number,
  spellings: readonly Spelling<Unit>[],
): { readonly piece: Piece<Unit>; readonly length: number } | undefined {
  const digits = matchAt(number, text, at);
  if (digits !== undefined) {
    const printed = printedNumber(digits);
    return printed && { piece: { kind: 'number', ...printed }, length: digits.length };
  }
  for (const { unit, pattern } of spellings) {
    const spelled = matchAt(pattern, text, at);
    if (spelled !== undefined) return { piece: { kind: 'unit', unit }, length: spelled.length };
  }
  for (const { pattern, piece } of binders) {
    const bound = matchAt(pattern, text, at);
    if (bound !== undefined) return { piece, length: bound.length };
  }
  return undefined;
}

/** A decimal point or comma; `1,000` may mean a thousand or one, so it is nothing until someone asks. */
function printedNumber(digits: string): PrintedNumber | undefined {
  const parts = /^(\d{0,6})(?:([.,])(\d{1,6}))?$/.exec(digits);
  if (parts === null) return undefined;
  const [, whole = '', mark, decimals = ''] = parts;
  if (mark === ',' && decimals.length === 3 && Number(whole) > 0) return undefined;
  return {
    value: Number(`${whole || '0'}.${decimals || '0'}`),
    halfStep: 0.5 / 10 ** decimals.length,
  };
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
