/** When a wrench was in doubt: from its last good calibration to the next, because of what was found or what happened to it. */

import type { WrenchCondition } from '../engine/torque';
import type { CertificatePoint, Tool, ToolNote } from '../storage/contract';

export type WrenchTool = Extract<Tool, { readonly kind: 'wrench' }>;
type NoteOf<K extends ToolNote['kind']> = Extract<ToolNote, { readonly kind: K }>;

/** A day, and where it is known the very time, as a clock claimed it. */
export interface Moment {
  readonly on: string;
  readonly at?: string | undefined;
}

export interface Doubt {
  readonly wrench: string;
  /** The place of the note that raised it, or `condition` where there is none. */
  readonly key: string;
  readonly cause: 'found-outside' | 'dropped' | 'overloaded';
  /** ISO date on which it was found or happened. */
  readonly on: string;
  readonly by?: string | undefined;
  readonly reason?: string | undefined;
  readonly reference?: string | undefined;
  /** The last good calibration before it: what was tightened since then is in doubt. */
  readonly since: Moment;
  /** The calibration that put it right; open without. */
  readonly until?: Moment | undefined;
  /** What a calibration has measured since, before anything was put right. */
  readonly found?: readonly CertificatePoint[] | undefined;
}

type Open = Omit<Doubt, 'until'>;

/** All of them, first to last. */
export function doubtsOf(tool: WrenchTool): readonly Doubt[] {
  const { history = [], wrench } = tool;
  const ended: Doubt[] = [];
  let since: Moment = { on: firstCalibration(tool) };
  let open: Open | undefined;
  for (const [index, note] of history.entries()) {
    const base = { wrench: wrench.id, key: String(index), since };
    if (note.kind === 'condition') open ??= fromCondition(note, base);
    if (note.kind !== 'calibrated') continue;
    open = foundIn(note, open, base);
    if (!note.isGood) continue;
    const now = momentOf(note);
    if (open !== undefined) ended.push({ ...open, until: now });
    open = undefined;
    since = now;
  }
  const last = open ?? withoutNote(wrench.id, wrench.condition, since);
  return last === undefined ? ended : [...ended, last];
}

/** Whether only a good calibration can put it back into service. */
export function needsCalibration(tool: WrenchTool): boolean {
  return doubtsOf(tool).some(({ until }) => until === undefined);
}

/** The one that an address names. */
export function doubtByKey(tool: WrenchTool, key: string): Doubt | undefined {
  return doubtsOf(tool).find((doubt) => doubt.key === key);
}

/** What was written down about calling bikes back because of this doubt. */
export function calledBackFor(tool: WrenchTool, { key }: Doubt): readonly NoteOf<'called-back'>[] {
  return (tool.history ?? []).flatMap((note) =>
    note.kind === 'called-back' && note.doubt === key ? [note] : [],
  );
}

/** Whether something done at `at` falls into the doubt; on the days at its ends only a known time tells. */
export function isInDoubt({ since, until }: Doubt, at: string): boolean {
  const day = at.slice(0, 10);
  const isAfter = since.on === day ? isAtOrAfter(at, since.at) : since.on < day;
  if (until === undefined) return isAfter;
  const isBefore = until.on === day ? isAtOrAfter(until.at ?? at, at) : day < until.on;
  return isAfter && isBefore;
}

function isAtOrAfter(at: string, limit: string | undefined): boolean {
  return limit === undefined || Date.parse(at) >= Date.parse(limit);
}

function firstCalibration({ history = [], wrench }: WrenchTool): string {
  const first = history.find((note) => note.kind === 'calibrated');
  return first?.since ?? wrench.calibratedOn;
}

function fromCondition(
  { to, on, by, reason }: NoteOf<'condition'>,
  base: Pick<Doubt, 'wrench' | 'key' | 'since'>,
): Open | undefined {
  return to === 'dropped' || to === 'overloaded'
    ? { ...base, cause: to, on, by, reason }
    : undefined;
}

/** A calibration that found it outside raises a doubt; one that measured anything says more about an open one. */
function foundIn(
  note: NoteOf<'calibrated'>,
  open: Open | undefined,
  base: Pick<Doubt, 'wrench' | 'key' | 'since'>,
): Open | undefined {
  const { found, foundOutside, on, by, reference } = note;
  if (open?.found !== undefined) return open; // as it first came is what counts
  if (foundOutside) return { ...(open ?? base), cause: 'found-outside', on, by, reference, found };
  return open && (found.length === 0 ? open : { ...open, found, reference });
}

function momentOf({ on, at }: NoteOf<'calibrated'>): Moment {
  return at.claimed.startsWith(on) ? { on, at: at.claimed } : { on };
}

function withoutNote(id: string, condition: WrenchCondition, since: Moment): Open | undefined {
  if (condition !== 'dropped' && condition !== 'overloaded') return undefined;
  return { wrench: id, key: 'condition', cause: condition, on: since.on, since };
}
