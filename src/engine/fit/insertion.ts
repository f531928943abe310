/** How far a seat post or a quill stem must stand inside its tube at least. */

import { compareNumbers, ok, type Result, refuse } from '../base';
import { type Millimetres, millimetres } from '../units';

export interface SeatPost {
  readonly diameter: Millimetres;
  /** Absent means round. */
  readonly circular?: boolean;
  /** From the lowest point of the post to the saddle clamp. */
  readonly length?: Millimetres;
  /** From the lowest point of the post to the line its maker marked on it. */
  readonly mark?: Millimetres;
}

export interface Insertion {
  readonly minimum: Millimetres;
  /** Which of the rules asks for the most. */
  readonly limitedBy: 'diameter' | 'shape' | 'mark' | 'frame';
}

/**
 * The least insertion of a seat post, in mm from its lowest point: the greatest of twice its diameter (a post that is not
 * round: 65 mm), its maker's mark, and the frame maker's own minimum. Refuses a post that is too short to reach it.
 * Source: 16 CFR 1512.15(b); JIS D 9301:2019; that the frame maker's greater minimum rules: owners' manuals.
 */
export function minimumInsertion(asked: {
  readonly post: SeatPost;
  readonly frame?: { readonly minimum?: Millimetres | undefined };
}): Result<Insertion, PostTooShort> {
  const { diameter, circular = true, length, mark } = asked.post;
  const byDesign: Insertion = circular
    ? { minimum: millimetres(2 * diameter), limitedBy: 'diameter' }
    : { minimum: millimetres(65), limitedBy: 'shape' };
  const insertion = greatest([
    byDesign,
    { minimum: mark, limitedBy: 'mark' },
    { minimum: asked.frame?.minimum, limitedBy: 'frame' },
  ]);
  if (length !== undefined && length < insertion.minimum) {
    return refuse({ code: 'post-too-short', length, ...insertion });
  }
  return ok(insertion);
}
export type PostTooShort = Insertion & {
  readonly code: 'post-too-short';
  readonly length: Millimetres;
};

/**
 * The least insertion of a quill stem, in mm from its lowest point: the greater of 2.5 times its diameter and its maker's
 * mark. Source: 16 CFR 1512.6(a) and ISO 4210-2, both from memory.
 */
export function minimumQuillInsertion(quill: {
  readonly diameter: Millimetres;
  readonly mark?: Millimetres | undefined;
}): Insertion {
  return greatest([
    { minimum: millimetres(2.5 * quill.diameter), limitedBy: 'diameter' },
    { minimum: quill.mark, limitedBy: 'mark' },
  ]);
}

type Rule = {
  readonly minimum: Millimetres | undefined;
  readonly limitedBy: Insertion['limitedBy'];
};

/** Of equal rules the first named limits. */
function greatest([first, ...others]: readonly [Insertion, ...Rule[]]): Insertion {
  const known = others.flatMap(({ minimum, limitedBy }) =>
    minimum === undefined ? [] : [{ minimum, limitedBy }],
  );
  const ranked = [first, ...known].sort((a, b) => compareNumbers(b.minimum, a.minimum));
  return ranked[0] ?? first;
}
