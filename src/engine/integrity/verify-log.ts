/** Whether a log is whole and unaltered, and if not, which entry shows it first. */

import { compareText, ok, type Refused, type Result, refuse } from '../base';
import { jsonFault } from './canonical-json';
import { type Entry, idFromContent } from './entry';
import { entrySchema } from './entry.schema';
import { type GraphFault, graphFault } from './graph-fault';
import { comparePlaces, headsOf, orderLog } from './log-order';
import { type SealBroken, sealFault } from './seal-fault';

/** What the verifier was told from elsewhere, for example by a signature or a sheet. */
export interface ExpectedLog {
  readonly job?: string;
  /** The exact heads. Without them a log cut off at its end cannot be told from a shorter one. */
  readonly heads?: readonly string[];
  /** The entries claim to stand in log order, each once, as they do in a file. */
  readonly inOrder?: boolean;
  /** What was found of each signature, by the entry it stands in: keys are not the engine's to use. */
  readonly signatures?: ReadonlyMap<string, SignatureFinding>;
}

export const signatureFindings = ['good', 'signer-unknown', 'signature-wrong'] as const;
export type SignatureFinding = (typeof signatureFindings)[number];

export interface WholeLog {
  readonly heads: readonly string[];
  readonly count: number;
  /** The ids after which the log went on in more than one way (devices that were apart). */
  readonly forks: readonly string[];
}

/**
 * Verifies entries in any order, with duplicates. The first damaged entry is named: first one whose shape or content is
 * wrong (in the order given for a broken shape, in log order for a changed content), then, among entries that are each
 * intact, the first that does not fit the others, that was written after the seal and is no amendment, whose signature
 * does not hold, or that stands elsewhere than it claims; last, what the expected heads show.
 */
export function verifyLog(
  entries: readonly unknown[],
  expected: ExpectedLog = {},
): Result<WholeLog, LogDamaged> {
  const malformed = entries.findIndex((entry) => !isEntry(entry));
  if (malformed >= 0) return refuse({ code: 'entry-malformed', index: malformed });
  const given = entries as readonly Entry[];
  const changed = firstChanged(given);
  if (changed) return changed;
  const log = orderLog(given);
  const fault =
    graphFault(log, expected.job ?? usualJob(log)) ??
    sealFault(log) ??
    signatureFault(log, expected.signatures) ??
    (expected.inOrder ? orderFault(given, log) : undefined);
  if (fault) return refuse(fault);
  const heads = headsOf(log);
  return (
    headsFault(heads, expected.heads ?? heads) ??
    ok({ heads, count: log.length, forks: forksOf(log) })
  );
}
export type LogDamaged =
  | { readonly code: 'entry-malformed'; readonly index: number }
  | ({ readonly code: 'entry-changed'; readonly contentId: string } & EntryPlace)
  | GraphFault
  | SealBroken
  | ({ readonly code: 'signer-unknown' | 'signature-wrong'; readonly by: string } & EntryPlace)
  | ({ readonly code: 'entry-out-of-order' } & EntryPlace)
  | { readonly code: 'head-missing'; readonly head: string }
  | { readonly code: 'head-unexpected'; readonly head: string };

export type EntryPlace = Pick<Entry, 'id' | 'device' | 'seq'>;

function isEntry(entry: unknown): entry is Entry {
  return jsonFault(entry) === undefined && entrySchema.safeParse(entry).success;
}

/** Looks at every copy, because a duplicate id may hide another content. */
function firstChanged(entries: readonly Entry[]): Refused<LogDamaged> | undefined {
  for (const entry of [...entries].sort(comparePlaces)) {
    const contentId = idFromContent(entry);
    const { id, device, seq } = entry;
    if (contentId !== id) return refuse({ code: 'entry-changed', id, device, seq, contentId });
  }
  return undefined;
}

/** The job that most entries name, so that one stray entry is the stray one. */
function usualJob(log: readonly Entry[]): string {
  const countByJob = new Map<string, number>();
  for (const { job } of log) countByJob.set(job, (countByJob.get(job) ?? 0) + 1);
  const [usual] = [...countByJob].sort(([, a], [, b]) => b - a);
  return usual?.[0] ?? '';
}

function signatureFault(
  log: readonly Entry[],
  signatures: ExpectedLog['signatures'] = new Map(),
): LogDamaged | undefined {
  for (const { id, device, seq, by } of log) {
    const code = signatures.get(id) ?? 'good';
    if (code !== 'good') return { code, id, device, seq, by };
  }
  return undefined;
}

function orderFault(given: readonly Entry[], log: readonly Entry[]): LogDamaged | undefined {
  const astray = given.find(({ id }, place) => id !== log[place]?.id);
  if (astray === undefined) return undefined;
  const { id, device, seq } = astray;
  return { code: 'entry-out-of-order', id, device, seq };
}

function headsFault(
  heads: readonly string[],
  expected: readonly string[],
): Refused<LogDamaged> | undefined {
  const missing = expected.find((head) => !heads.includes(head));
  if (missing !== undefined) return refuse({ code: 'head-missing', head: missing });
  const unexpected = heads.find((head) => !expected.includes(head));
  return unexpected === undefined
    ? undefined
    : refuse({ code: 'head-unexpected', head: unexpected });
}

function forksOf(log: readonly Entry[]): readonly string[] {
  const childrenByParent = new Map<string, number>();
  for (const parent of log.flatMap((entry) => [...new Set(entry.parents)])) {
    childrenByParent.set(parent, (childrenByParent.get(parent) ?? 0) + 1);
  }
  const forks = [...childrenByParent].filter(([, children]) => children > 1);
  return forks.map(([parent]) => parent).sort(compareText);
}
