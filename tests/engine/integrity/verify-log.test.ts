/** Verification of a log: what is whole, and what each damage is called. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Entry, headsOf, orderLog, seal, verifyLog } from '../../../src/engine/integrity';
import { anyLog, chain, forkAndJoin, unsealed, written } from '../../support/written-log';

function refusalOf(...asked: Parameters<typeof verifyLog>) {
  const answer = verifyLog(...asked);
  return answer.ok ? undefined : answer.refusal;
}

/** The position of an entry whose JSON is `text` in `log`, with one byte of it changed. */
const anyFlip = fc
  .tuple(anyLog, fc.nat(), fc.nat(), fc.integer({ min: 1, max: 255 }))
  .map(([log, which, where, mask]) => {
    const place = which % log.length;
    const bytes = new TextEncoder().encode(JSON.stringify(log[place]));
    const at = where % bytes.length;
    bytes[at] = (bytes[at] ?? 0) ^ mask;
    return { log, place, bytes };
  });

describe('verifyLog', () => {
  test('[I9] an empty log and a chain are whole', () => {
    const log = chain(3);
    expect(verifyLog([])).toEqual({ ok: true, value: { heads: [], count: 0, forks: [] } });
    expect(verifyLog(log, { job: 'job-1', heads: [log[2]?.id ?? ''] })).toEqual({
      ok: true,
      value: { heads: [log[2]?.id], count: 3, forks: [] },
    });
  });

  test('[I9] a fork is whole before and after it is joined, and says where it began', () => {
    const { root, a, b, log } = forkAndJoin();
    expect(verifyLog([b, a, root])).toMatchObject({ ok: true, value: { forks: [root.id] } });
    expect(verifyLog(log)).toMatchObject({ ok: true, value: { count: 4, forks: [root.id] } });
  });

  test('[I9] any log that tablets can write is whole, shuffled, repeated, and read back from JSON', () => {
    fc.assert(
      fc.property(
        anyLog.chain((log) =>
          fc.tuple(
            fc.constant(log),
            fc.shuffledSubarray([...log, ...log], { minLength: log.length }),
          ),
        ),
        ([log, some]) => {
          const entries = JSON.parse(JSON.stringify([...some, ...log]));
          expect(verifyLog(entries, { heads: headsOf(log) })).toMatchObject({
            ok: true,
            value: { count: log.length },
          });
        },
      ),
    );
  });

  test('[I10] any changed byte is found, and the changed entry is named', () => {
    fc.assert(
      fc.property(anyFlip, ({ log, place, bytes }) => {
        const changed = readBack(bytes);
        if (changed === undefined) return; // No longer JSON, or not UTF-8: seen before it gets here.
        const entries = log.map((entry, index) => (index === place ? changed : entry));
        const { id, device, seq } = (changed ?? {}) as Entry;
        expect([
          { code: 'entry-changed', id, device, seq },
          { code: 'entry-malformed', index: place },
        ]).toContainEqual(factsOf(refusalOf(entries)));
      }),
      { numRuns: 1000 },
    );
  });

  test('[I10] a changed copy is found beside the true one', () => {
    const [one, two] = chain(2) as [Entry, Entry];
    const forged = { ...one, by: 'person-9' };
    const named = { code: 'entry-changed', id: one.id, device: 'tablet-a', seq: 1 };
    expect(refusalOf([one, forged, two])).toMatchObject(named);
    expect(refusalOf([forged, one, two])).toMatchObject(named);
  });

  test('[I10] a member that was added is a change', () => {
    const [one] = chain(1) as [Entry];
    expect(refusalOf([{ ...one, note: 'added' }])).toMatchObject({
      code: 'entry-changed',
      id: one.id,
    });
  });

  test('[I10] of several changed entries the first in order is named', () => {
    const [one, two, three] = chain(3) as [Entry, Entry, Entry];
    const entries = [{ ...three, by: 'x' }, one, { ...two, by: 'x' }];
    expect(refusalOf(entries)).toMatchObject({ code: 'entry-changed', id: two.id });
  });

  test('[I11] taking any entry but a last one out of any log is found', () => {
    fc.assert(
      fc.property(anyLog, fc.nat(), (log, which) => {
        const heads = headsOf(log);
        const inner = log.filter((entry) => !heads.includes(entry.id));
        const taken = inner[which % Math.max(1, inner.length)];
        if (!taken) return;
        const refusal = refusalOf(log.filter((entry) => entry !== taken));
        expect([
          { code: 'entry-missing', device: taken.device, seq: taken.seq },
          { code: 'parent-missing', parent: taken.id },
        ]).toContainEqual(factsOf(refusal));
      }),
    );
  });

  test('[I11] a hole in a chain is named by device and number, a lost other branch by its id', () => {
    const [one, two, three] = chain(3) as [Entry, Entry, Entry];
    const before = three.id;
    expect(refusalOf([one, three])).toEqual({
      code: 'entry-missing',
      device: 'tablet-a',
      seq: 2,
      before,
    });
    expect(refusalOf([two, three])).toMatchObject({
      code: 'entry-missing',
      seq: 1,
      before: two.id,
    });
    const { root, a, b, join } = forkAndJoin();
    expect(refusalOf([root, a, join])).toEqual({
      code: 'parent-missing',
      id: join.id,
      device: 'tablet-a',
      seq: 3,
      parent: b.id,
    });
  });

  test('[I12] a cut end shows only against the expected heads', () => {
    const log = chain(4);
    const cut = log.slice(0, 2);
    expect(verifyLog(cut).ok).toBe(true);
    expect(refusalOf(cut, { heads: headsOf(log) })).toEqual({
      code: 'head-missing',
      head: log[3]?.id,
    });
    expect(refusalOf([], { heads: headsOf(log) })).toEqual({
      code: 'head-missing',
      head: log[3]?.id,
    });
  });

  test('[I12] an entry added after the expected heads shows as well', () => {
    const { root, a, b } = forkAndJoin();
    expect(refusalOf([root, a, b], { heads: [a.id] })).toEqual({
      code: 'head-unexpected',
      head: b.id,
    });
    expect(refusalOf([root, a], { heads: [root.id] })).toEqual({
      code: 'head-missing',
      head: root.id,
    });
  });

  test('[I13] two entries in one place are named with both ids', () => {
    const [root] = chain(1) as [Entry];
    const one = written([root], 'tablet-a', 'one');
    const two = written([root], 'tablet-a', 'two');
    const refusal = refusalOf([one, two, root]);
    expect(refusal).toMatchObject({ code: 'seq-forked', device: 'tablet-a', seq: 2 });
    expect(refusal).toHaveProperty('ids', [one.id, two.id].sort());
  });

  test.each<[situation: string, changes: Parameters<typeof unsealed>[0], code: string]>([
    ['a lamport that skips', { lamport: 3 }, 'lamport-wrong'],
    ['a lamport that stands still', { lamport: 1 }, 'lamport-wrong'],
    ['no parents, though it is the second', { parents: [], lamport: 1 }, 'own-past-unseen'],
    ['another job', { job: 'job-2' }, 'entry-of-another-job'],
  ])('[I14] an entry sealed with %s is named', (_, changes, code) => {
    const [one] = chain(1) as [Entry];
    const wrong = seal(unsealed({ seq: 2, lamport: 2, parents: [one.id], ...changes }));
    expect(refusalOf([one, wrong], { job: 'job-1' })).toMatchObject({ code, id: wrong.id });
  });

  test('[I14] without an expected job the stray entry is the one that differs from most', () => {
    const stray = seal(unsealed({ job: 'job-2', device: 'a-first-by-name' }));
    expect(refusalOf([stray, ...chain(2)])).toMatchObject({
      code: 'entry-of-another-job',
      id: stray.id,
      job: 'job-2',
      expectedJob: 'job-1',
    });
  });

  test('[I21] a signature that does not hold is named with its entry and who is said to have signed', () => {
    const log = chain(3);
    const [, two] = log as [Entry, Entry];
    for (const code of ['signer-unknown', 'signature-wrong'] as const) {
      expect(refusalOf(log, { signatures: new Map([[two.id, code]]) })).toEqual({
        code,
        id: two.id,
        device: 'tablet-a',
        seq: 2,
        by: 'person-1',
      });
    }
    expect(verifyLog(log, { signatures: new Map([[two.id, 'good']]) }).ok).toBe(true);
  });

  test('[I22] a log that claims its order is whole only in it', () => {
    fc.assert(
      fc.property(
        anyLog.chain((log) =>
          fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length })),
        ),
        ([log, shuffled]) => {
          const ordered = orderLog(log);
          expect(verifyLog(ordered, { inOrder: true }).ok).toBe(true);
          const first = shuffled.find((entry, place) => entry !== ordered[place]);
          const refusal = refusalOf(shuffled, { inOrder: true });
          expect(refusal).toEqual(
            first && {
              code: 'entry-out-of-order',
              id: first.id,
              device: first.device,
              seq: first.seq,
            },
          );
        },
      ),
    );
  });

  test('[I15] any value at all is answered with its place in the list', () => {
    const [one] = chain(1) as [Entry];
    fc.assert(
      fc.property(fc.anything({ withMap: true, withDate: true, withBigInt: true }), (value) => {
        expect(refusalOf([one, value])).toEqual({ code: 'entry-malformed', index: 1 });
      }),
    );
    const lone = JSON.parse(JSON.stringify(one).replace('note 1', '\\ud800'));
    expect(refusalOf([lone])).toEqual({ code: 'entry-malformed', index: 0 });
  });
});

function readBack(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}

/** The refusal without the facts that only help to explain it. */
function factsOf(refusal: ReturnType<typeof refusalOf>): object {
  switch (refusal?.code) {
    case 'entry-changed': {
      const { contentId: _, ...facts } = refusal;
      return facts;
    }
    case 'entry-missing':
      return { code: refusal.code, device: refusal.device, seq: refusal.seq };
    case 'parent-missing':
      return { code: refusal.code, parent: refusal.parent };
    default:
      return refusal ?? {};
  }
}
