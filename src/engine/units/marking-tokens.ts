/** Cuts a printed marking into numbers, units and the few words that bind them; anything else is refused. */

import { ok, type Result, refuse } from '../base';
import { spokenNumberAt } from './number-words';

/** A number as printed: `halfStep` is half of its last digit, which is how far rounding may have moved it. */
export type PrintedNumber = { readonly value: number; readonly halfStep: number };

type Binder =
  | 'to'
  | 'and'
  | 'between'
  | 'plus-minus'
  | 'plus'
  | 'percent'
  | 'break'
  | 'open'
  | 'close';

type Piece<Unit extends string> =
  | ({ readonly kind: 'number' } & PrintedNumber)
  | { readonly kind: 'unit'; readonly unit: Unit }
  /** `trailing`: it belongs to the number before it, whatever follows. */
  | { readonly kind: 'bound'; readonly bound: 'min' | 'max'; readonly trailing?: boolean }
  | { readonly kind: Binder };

export type Token<Unit extends string> = Piece<Unit> & {
  readonly start: number;
  readonly end: number;
};

/** How one unit may be spelled: sticky and case-insensitive, tried at the start of a word. */
export type Spelling<Unit extends string> = { readonly unit: Unit; readonly pattern: RegExp };

/** How a marking may be written: its units, and what may stand beside the figure without being part of it (sticky). */
export type Writing<Unit extends string> = {
  readonly spellings: readonly Spelling<Unit>[];
  readonly beside?: RegExp;
};

export type MarkingNotUnderstood = {
  readonly code: 'marking-not-understood';
  readonly text: string;
  /** The part of the text that could not be read. */
  readonly part: string;
};

const number = /\d+(?:[.,]\d+)*|\.\d+/y;
const filler =
  /\s+|\b(?:tightening|recommended|nominal|torque|inflate\s+to|inflate|inflation|pressure|tyre|tire)\b(?:\s?[:=])?/iy;
const letter = /\p{L}/uy;
const word = /[\p{L}\p{N}.,]*[\p{L}\p{N}]|./uy;

const most =
  'max(?:imum|imal|i)?(?![a-z])\\.?|up to\\b|(?:do )?not (?:to )?exceed\\b|(?:not|no) (?:more than|over)\\b|at most\\b|less than\\b|under\\b';
const least = 'min(?:imum|imal|i)?(?![a-z])\\.?|(?:not|no) less than\\b|at least\\b|more than\\b';

/** A bound may stand in brackets of its own: `4 N·m (min)`. */
const bound = (words: string, trailing: string) =>
  new RegExp(`(?:${words})(?:\\s?[:=]|\\s+of\\b)?|${trailing}|\\(\\s*(?:${words})\\s*\\)`, 'iy');

const binders: readonly { readonly pattern: RegExp; readonly piece: Piece<never> }[] = [
  { pattern: /±|\+\s*\/\s*[-–−]|\+-/y, piece: { kind: 'plus-minus' } },
  { pattern: /\+/y, piece: { kind: 'plus' } },
  { pattern: /%|per ?cent\b/iy, piece: { kind: 'percent' } },
  {
    pattern: bound(`≤|<=?|${most}`, 'or (?:less|under|below)\\b'),
    piece: { kind: 'bound', bound: 'max' },
  },
  {
    pattern: bound(`≥|>=?|${least}`, 'or (?:more|over|above)\\b'),
    piece: { kind: 'bound', bound: 'min' },
  },
  { pattern: /(?:between|from)\b/iy, piece: { kind: 'between' } },
  { pattern: /and\b/iy, piece: { kind: 'and' } },
  {
    pattern: /[-‐‑‒–—―−~〜÷∼]|\.{2,3}|(?:to|bis|tot|through)\b|[àa](?= )/iy,
    piece: { kind: 'to' },
  },
  { pattern: /[([{]/y, piece: { kind: 'open' } },
  { pattern: /[)\]}]/y, piece: { kind: 'close' } },
  { pattern: /[/,;=|:]|or\b/iy, piece: { kind: 'break' } },
];

/** Reads the whole text into tokens, left to right, or refuses with the first part that is none. */
export function tokensOf<Unit extends string>(
  text: string,
  writing: Writing<Unit>,
): Result<readonly Token<Unit>[], MarkingNotUnderstood> {
  const tokens: Token<Unit>[] = [];
  let at = 0;
  while (at < text.length) {
    const skipped = matchAt(filler, text, at) ?? matchAt(writing.beside, text, at);
    if (skipped !== undefined) {
      at += skipped.length;
      continue;
    }
    const found = pieceAt(text, at, writing.spellings);
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
  if (matchAt(letter, text, at) !== undefined) {
    for (const { unit, pattern } of spellings) {
      const spelled = matchAt(pattern, text, at);
      if (spelled !== undefined) return { piece: { kind: 'unit', unit }, length: spelled.length };
    }
    const spoken = spokenNumberAt(text, at);
    if (spoken !== undefined) {
      const { value, decimals, length } = spoken;
      return { piece: { kind: 'number', value, halfStep: 0.5 / 10 ** decimals }, length };
    }
  }
  for (const { pattern, piece } of binders) {
    const words = matchAt(pattern, text, at);
    if (words === undefined) continue;
    const trailing = piece.kind === 'bound' && /^(?:\(|or\b)/i.test(words);
    return { piece: trailing ? { ...piece, trailing } : piece, length: words.length };
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
    value: Number(`${whole}.${decimals}`),
    halfStep: 0.5 / 10 ** decimals.length,
  };
}

function matchAt(pattern: RegExp | undefined, text: string, at: number): string | undefined {
  if (pattern === undefined) return undefined;
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
