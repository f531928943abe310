/** How entries that are each intact can still fail to make one whole log. */

import type { Entry } from './entry';

type Of<Code extends string, Facts> = { readonly code: Code } & Readonly<Facts>;
type AtEntry = { id: string; device: string; seq: number };

export type GraphFault =
  | Of<'entry-of-another-job', AtEntry & { job: string; expectedJob: string }>
  | Of<'seq-forked', { device: string; seq: number; ids: readonly string[] }>
  | Of<'entry-missing', { device: string; seq: number; before: string }>
  | Of<'parent-missing', AtEntry & { parent: string }>
  | Of<'lamport-wrong', AtEntry & { lamport: number; expectedLamport: number }>
  | Of<'own-past-unseen', AtEntry>;

/** The greatest seq of each device that an entry has seen through its parents. */
type SeenByDevice = ReadonlyMap<string, number>;

/** The first entry of an ordered log, each id once, that does not fit the others, and why. */
export function graphFault(log: readonly Entry[], job: string): GraphFault | undefined {
  const byId = new Map(log.map((entry) => [entry.id, entry]));
  const idsByPlace = new Map<string, string[]>();
  for (const entry of log) {
    const place = placeKey(entry.device, entry.seq);
    idsByPlace.set(place, [...(idsByPlace.get(place) ?? []), entry.id]);
  }
  const seenById = new Map<string, SeenByDevice>();
  for (const entry of log) {
    const fault =
      strayFault(entry, job) ??
      seqFault(entry, idsByPlace) ??
      parentFault(entry, byId) ??
      lamportFault(entry, byId);
    if (fault) return fault;
    const seen = seenThrough(entry.parents.map((parent) => seenById.get(parent) ?? new Map()));
    const { id, device, seq } = entry;
    if ((seen.get(device) ?? 0) !== seq - 1) return { code: 'own-past-unseen', id, device, seq };
    seenById.set(id, new Map([...seen, [device, seq]]));
  }
  return undefined;
}

function strayFault({ id, device, seq, job }: Entry, expectedJob: string): GraphFault | undefined {
  if (job === expectedJob) return undefined;
  return { code: 'entry-of-another-job', id, device, seq, job, expectedJob };
}

function seqFault(
  { id, device, seq }: Entry,
  idsByPlace: ReadonlyMap<string, readonly string[]>,
): GraphFault | undefined {
  const ids = idsByPlace.get(placeKey(device, seq)) ?? [];
  if (ids.length > 1) return { code: 'seq-forked', device, seq, ids };
  if (seq === 1 || idsByPlace.has(placeKey(device, seq - 1))) return undefined;
  return { code: 'entry-missing', device, seq: seq - 1, before: id };
}

function parentFault(
  { id, device, seq, parents }: Entry,
  byId: ReadonlyMap<string, Entry>,
): GraphFault | undefined {
  const parent = parents.find((candidate) => !byId.has(candidate));
  return parent === undefined ? undefined : { code: 'parent-missing', id, device, seq, parent };
}

function lamportFault(
  { id, device, seq, lamport, parents }: Entry,
  byId: ReadonlyMap<string, Entry>,
): GraphFault | undefined {
  const greatest = parents.reduce(
    (most, parent) => Math.max(most, byId.get(parent)?.lamport ?? 0),
    0,
  );
  const expectedLamport = greatest + 1;
  if (lamport === expectedLamport) return undefined;
  return { code: 'lamport-wrong', id, device, seq, lamport, expectedLamport };
}

function seenThrough(parents: readonly SeenByDevice[]): SeenByDevice {
  const seen = new Map<string, number>();
  for (const [device, seq] of parents.flatMap((parent) => [...parent])) {
    seen.set(device, Math.max(seen.get(device) ?? 0, seq));
  }
  return seen;
}

function placeKey(device: string, seq: number): string {
  return `${seq} ${device}`;
}
