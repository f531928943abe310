/** One bit of every byte of a golden log is turned over: each is found, and the entry it stands in is named. */

import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { type Entry, kindOfDamage, verifyLog } from '../../src/engine/integrity';
import { seededRandom } from '../support/seeded-random';
import type { GoldenRecord } from './record';

const seed = 9162;
/** Milliseconds: each of some hundred thousand entries is parsed and hashed. */
const patience = 120_000;

const file = new URL('./mountain-bike.json', import.meta.url);
const { entries }: GoldenRecord = JSON.parse(readFileSync(file, 'utf8'));

test(
  `the log of the mountain bike, byte for byte (seed ${seed})`,
  () => {
    const random = seededRandom(seed);
    const missed: string[] = [];
    const counts = { atTheDoor: 0, changed: 0, malformed: 0, sameValue: 0 };
    for (const entry of entries) {
      const bytes = new TextEncoder().encode(JSON.stringify(entry));
      for (let at = 0; at < bytes.length; at += 1) {
        const bit = 1 << Math.floor(random() * 8);
        const read = flipped(bytes, at, bit);
        if (read === undefined) counts.atTheDoor += 1;
        // The seventeenth digit of a number may be written another way and still be the same number.
        else if (isDeepStrictEqual(read, entry)) counts.sameValue += 1;
        else {
          const found = namedIn(read, entry);
          if (found === undefined) missed.push(`entry ${entry.seq} byte ${at} bit ${bit}`);
          else counts[found] += 1;
        }
      }
    }
    expect(missed).toEqual([]);
    expect(counts.changed).toBeGreaterThan(10_000);
    expect(counts.malformed).toBeGreaterThan(1000);
    expect(counts.sameValue).toBeLessThan(10);
  },
  patience,
);

/** What the flip was called, when the verifier called it by the right entry; the other entries are whole and change nothing. */
function namedIn(read: unknown, { id, device, seq }: Entry): 'changed' | 'malformed' | undefined {
  const answer = verifyLog([read]);
  if (answer.ok) return undefined;
  const kind = kindOfDamage(answer.refusal);
  if (kind === 'malformed') return kind;
  const { refusal } = answer;
  if (refusal.code !== 'entry-changed') return undefined;
  // A flip changes one member; each of the other two still tells which entry it was.
  const told = [refusal.id === id, refusal.device === device, refusal.seq === seq];
  return told.filter(Boolean).length >= 2 ? 'changed' : undefined;
}

/** Nothing where it is not even text or JSON any more: such a file is refused at the door. */
function flipped(bytes: Uint8Array, at: number, bit: number): unknown {
  const changed = Uint8Array.from(bytes);
  changed[at] = (changed[at] ?? 0) ^ bit;
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(changed));
  } catch {
    return undefined;
  }
}
