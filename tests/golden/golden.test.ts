/** What a release has written stays whole and keeps its meaning; any changed byte is found. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { digestOf, type Entry, verifyLog } from '../../src/engine/integrity';
import { eventSchema, jobPlanSchema, replay, statusOf } from '../../src/engine/job';
import { createKeys } from '../../src/platform/keys';
import { checkSignatures } from '../../src/state/signature-check';
import { seededRandom } from '../support/seeded-random';
import { type GoldenRecord, goldenNames, sheetToday } from './record';

const flipsPerRecord = 300;
const seed = 20261125;
/** Milliseconds: hundreds of verifications on a busy machine. */
const patience = 60_000;

const records = goldenNames.map((name): [string, GoldenRecord] => {
  const file = new URL(`./${name}.json`, import.meta.url);
  return [name, JSON.parse(readFileSync(file, 'utf8'))];
});

describe.each(records)('%s', (_, record) => {
  const { job, entries, heads, plan, sheet, publicKeys } = record;

  test('is whole under the heads it was written with', () => {
    expect(verifyLog(entries, { job, heads })).toEqual({
      ok: true,
      value: { heads, count: entries.length, forks: [] },
    });
  });

  test('has events and a plan that today’s schemas still read without losing a member', () => {
    for (const { event } of entries) expect(eventSchema.parse(event)).toEqual(event);
    expect(jobPlanSchema.parse(plan)).toEqual(plan);
  });

  test('names its plan by the plan’s digest', () => {
    expect(replay(entries).opened?.plan).toBe(digestOf(plan));
  });

  test('folds to a sheet that still says everything it said', () => {
    expect(statusOf(replay(entries, plan))).toBe('handed-over');
    // A later release may say more from the same log, never less and never otherwise.
    expect(sheetToday(record)).toMatchObject(sheet as object);
  });

  test('folds to the same sheet in any order, with duplicates', () => {
    const random = seededRandom(seed);
    const shuffled = [...entries, ...entries.slice(20, 60)]
      .map((entry) => ({ entry, place: random() }))
      .sort((a, b) => a.place - b.place)
      .map(({ entry }) => entry);
    const state = replay(shuffled, plan);
    expect(state).toEqual(replay(entries, plan));
    expect(verifyLog(shuffled, { job, heads })).toMatchObject({ ok: true });
  });

  test('has signatures that the keys written beside it still prove', async () => {
    const keys = createKeys({
      get: async (id) => ({ value: { publicKeys: publicKeys[id.replace('person:', '')] ?? [] } }),
      put: async () => undefined,
      change: async () => undefined,
    });
    const storage = { log: async () => ({ entries, plan }) };
    const found = await checkSignatures({ storage, keys }, job);
    expect(found.map(({ finding }) => finding)).toEqual(Array(found.length).fill('good'));
    expect(new Set(found.map(({ meaning }) => meaning))).toEqual(
      new Set(['built', 'checked', 'received']),
    );
  });

  test(
    `shows each of ${flipsPerRecord} flipped bits in its log and its plan (seed ${seed})`,
    () => {
      const random = seededRandom(seed);
      const log = Buffer.from(JSON.stringify(entries));
      const planned = Buffer.from(JSON.stringify(plan));
      const named = replay(entries).opened?.plan;
      const missed: string[] = [];
      // A flip that leaves no UTF-8 or no JSON is found at the door: it does not count.
      for (let flips = 0; flips < flipsPerRecord; ) {
        const isInPlan = flips % 5 === 4;
        const bytes = isInPlan ? planned : log;
        const at = Math.floor(random() * bytes.length);
        const bit = Math.floor(random() * 8);
        const read = flipped(bytes, at, bit);
        if (read === undefined) continue;
        flips += 1;
        const isFound = isInPlan ? digestOf(read) !== named : !isWhole(read, record);
        if (!isFound) missed.push(`${isInPlan ? 'plan' : 'log'} byte ${at} bit ${bit}`);
      }
      expect(missed).toEqual([]);
    },
    patience,
  );

  test(
    'shows each entry that is left out, repeated with another content, or cut off the end',
    () => {
      for (let n = 0; n < entries.length; n += 1) {
        const without = entries.filter((__, index) => index !== n);
        expect(verifyLog(without, { job, heads }).ok, `without entry ${n}`).toBe(false);
      }
      const [first] = entries as readonly [Entry];
      const twisted = { ...first, by: 'somebody-else' };
      expect(verifyLog([...entries, twisted], { job, heads })).toMatchObject({
        ok: false,
        refusal: { code: 'entry-changed', id: first.id },
      });
    },
    patience,
  );
});

test('every kind of event stands in one of the golden logs', () => {
  const kinds = new Set(
    records.flatMap(([, { entries }]) => entries.map(({ event }) => event.kind)),
  );
  const known = eventSchema.def.options.map(({ shape }) => shape.kind.def.values[0]);
  expect([...kinds].sort()).toEqual([...known].sort());
});

/** The value with one bit turned over, or nothing where it is not even text or JSON any more. */
function flipped(bytes: Buffer, at: number, bit: number): unknown {
  const changed = Uint8Array.from(bytes);
  changed[at] = (changed[at] ?? 0) ^ (1 << bit);
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(changed));
  } catch {
    return undefined;
  }
}

function isWhole(read: unknown, { job, heads }: GoldenRecord): boolean {
  return Array.isArray(read) && verifyLog(read, { job, heads }).ok;
}
