/** The only way to change a job: stamp, decide, seal and keep, in one transaction. */

import { assert, ok, type Result, refuse } from '../engine/base';
import {
  type Entry,
  entryVersion,
  type LogEnd,
  logEnd,
  nextPlace,
  seal,
} from '../engine/integrity';
import {
  type Asked,
  type Command,
  decide,
  evolve,
  type JobEvent,
  type JobRefusal,
  type JobState,
  replay,
  summaryOf,
  withPlan,
  wrenchDays,
} from '../engine/job';
import type {
  Customer,
  HeldJob,
  JobWrite,
  KeptBlob,
  Person,
  Storage,
  StorageRefusal,
} from '../storage/contract';
import type { Clock } from './ports';

export interface PerformPorts {
  readonly storage: Pick<Storage, 'changeJob'>;
  readonly clock: Clock;
  readonly device: string;
}

export interface Performed {
  readonly state: JobState;
  readonly events: readonly JobEvent[];
  readonly entries: readonly Entry[];
}

/** What belongs to a change but not into the log. */
export interface Extras {
  readonly blobs?: readonly KeptBlob[];
  readonly customer?: Customer;
}

export type Actor = Pick<Person, 'id' | 'roles'>;

export type Perform = (
  job: string,
  asked: Asked,
  person: Actor,
  extras?: Extras,
) => Promise<Result<Performed, PerformRefusal>>;

/** Something in the app itself went wrong; nothing was written. */
export type Bug = { readonly code: 'bug'; readonly message: string };
export type PerformRefusal = JobRefusal | StorageRefusal | Bug;

/** What the last change left, so that the next one need not read the log again. */
interface Known {
  readonly heads: readonly string[];
  readonly state: JobState;
}

export function createPerform({ storage, clock, device }: PerformPorts): Perform {
  const knownByJob = new Map<string, Known>();

  return async (job, asked, person, extras = {}) => {
    const stamp = { by: person.id, roles: person.roles, at: clock.now(), on: clock.today() };
    const known = knownByJob.get(job);
    try {
      const kept = await storage.changeJob(job, known?.heads, (held) => {
        const change = decided(job, device, held, known, (heads) => ({
          ...asked,
          stamp: { ...stamp, heads },
        }));
        return change.ok ? ok({ ...change.value, ...extras }) : change;
      });
      if (!kept.ok) return kept;
      const { state, events, entries, row } = kept.value;
      knownByJob.set(job, { heads: row.heads, state });
      return ok({ state, events, entries });
    } catch (error) {
      return refuse({
        code: 'bug',
        message: error instanceof Error ? error.message : String(error),
      });
    }
  };
}

type Change = JobWrite & Performed;

/** From what is held and what is asked to what is to be kept. Pure, so that it may run twice. */
export function decided(
  job: string,
  device: string,
  held: HeldJob,
  known: Known | undefined,
  commandOn: (heads: readonly string[]) => Command,
): Result<Change, JobRefusal> {
  const before = held.log === undefined ? known?.state : replay(held.log.entries, held.log.plan);
  assert(before !== undefined, 'a log that was left out had been read before');
  const end = endOf(held, device);
  const command = commandOn(end.heads);
  const events = decide(command, before);
  if (!events.ok) return events;

  const start = command.kind === 'open-job' ? withPlan(before, command.plan) : before;
  const written = write(job, device, command, events.value, { end, state: start });
  const last = written.entries.at(-1);
  const summary = summaryOf(written.state, { by: command.stamp.by, at: command.stamp.at.claimed });
  assert(
    last !== undefined && summary !== undefined,
    'a change to a job leaves an entry and a bike',
  );
  const opened = events.value.find(({ kind }) => kind === 'job-opened');
  return ok({
    ...written,
    events: events.value,
    row: {
      ...summary,
      job,
      heads: [last.id],
      lamport: last.lamport,
      seqs: { ...seqsOf(held), [device]: last.seq },
      count: (held.row?.count ?? 0) + written.entries.length,
      wrenchDays: wrenchDays(written.entries, written.state.plan, held.row?.wrenchDays),
    },
    ...(opened?.kind === 'job-opened' &&
      command.kind === 'open-job' && { plan: { digest: opened.plan, plan: command.plan } }),
  });
}

function write(
  job: string,
  device: string,
  { stamp: { at, by } }: Command,
  events: readonly JobEvent[],
  from: { readonly end: LogEnd; readonly state: JobState },
): { readonly entries: readonly Entry[]; readonly state: JobState } {
  let { end, state } = from;
  const entries = events.map((event) => {
    const entry = seal({ v: entryVersion, job, device, ...nextPlace(end), at, by, event });
    end = { heads: [entry.id], lamport: entry.lamport, lastSeq: entry.seq };
    state = evolve(state, entry);
    return entry;
  });
  return { entries, state };
}

function endOf({ row, log }: HeldJob, device: string): LogEnd {
  if (log !== undefined) return logEnd(log.entries, device);
  assert(row !== undefined, 'a job without a row comes with its log');
  return { heads: row.heads, lamport: row.lamport, lastSeq: row.seqs[device] ?? 0 };
}

function seqsOf({ row }: HeldJob): Readonly<Record<string, number>> {
  return row?.seqs ?? {};
}
