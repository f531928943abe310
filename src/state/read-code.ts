/** The code of a printed page, read back: what it says, and whether a tablet that is known here has signed it. */

import { ok, type Result, refuse } from '../engine/base';
import type { Keys } from './ports';

interface Coded {
  /** ISO date. */
  readonly on: string;
  /** Whether one of the shop's tablets that this one knows has signed it. */
  readonly isSignedHere: boolean;
}

/** Of a hand-over sheet: which record, and where its log ended. */
export interface SheetCode extends Coded {
  readonly kind: 'sheet';
  readonly job: string;
  readonly frame: string;
  readonly heads: readonly string[];
}

/** Of a day's page: one digest over every record of the shop. */
export interface DayCode extends Coded {
  readonly kind: 'day';
  readonly shop: string;
  readonly root: string;
  readonly count: number;
}

export type PrintedCode = SheetCode | DayCode;

const longest = 4000;
const digestShape = /^[0-9a-f]{64}$/;

/** Typed, pasted or scanned, with whatever white space came between. */
export async function readCode(
  keys: Pick<Keys, 'verify'>,
  given: string,
): Promise<Result<PrintedCode, CodeNotReadable>> {
  const code = given.replaceAll(/\s+/g, '');
  if (code.length > longest) return refuse({ code: 'code-not-readable' });
  const said = payloadOf(code);
  if (said === undefined) return refuse({ code: 'code-not-readable' });
  const signed = await keys.verify(code);
  const isSignedHere = signed.ok;
  const { job, frame, head, on, shop, root, count } = said;
  if (typeof on !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(on))
    return refuse({ code: 'code-not-readable' });
  if (typeof job === 'string' && typeof frame === 'string' && typeof head === 'string') {
    const heads = head.split(' ');
    if (heads.every((id) => digestShape.test(id)))
      return ok({ kind: 'sheet', job, frame, heads, on, isSignedHere });
  }
  const isDay = typeof shop === 'string' && typeof root === 'string' && digestShape.test(root);
  if (isDay && typeof count === 'number' && Number.isSafeInteger(count) && count >= 0)
    return ok({ kind: 'day', shop, root, count, on, isSignedHere });
  return refuse({ code: 'code-not-readable' });
}
export type CodeNotReadable = { readonly code: 'code-not-readable' };

/** The middle part of a compact JWS (RFC 7515), whoever has signed it. */
function payloadOf(code: string): Readonly<Record<string, unknown>> | undefined {
  const [, payload, , more] = code.split('.');
  if (payload === undefined || more !== undefined || !/^[A-Za-z0-9_-]+$/.test(payload)) return;
  try {
    const binary = atob(payload.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    const said: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    return typeof said === 'object' && said !== null ? { ...said } : undefined;
  } catch {
    return;
  }
}
