/** The table of sizes that is kept as data, against what the program reads. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { knownBeadSeats, parseTyreMarking } from '../../../src/engine/tyres';

const rowSchema = z.strictObject({
  size: z.string().check(z.minLength(3)),
  beadSeats: z.array(z.int()).check(z.minLength(1)),
  source: z.string().check(z.minLength(5)),
});

const file = new URL('../../../seeds/tables/bead-seats.json', import.meta.url);
const rows = z.array(rowSchema).parse(JSON.parse(readFileSync(file, 'utf8')));

describe('the table of bead seats', () => {
  test.each(rows)('[Y16] $size is read as $beadSeats', ({ size, beadSeats }) => {
    const answer = parseTyreMarking(size);
    const [only, ...others] = beadSeats;
    expect(answer).toMatchObject(
      others.length === 0
        ? { ok: true, value: { beadSeat: only } }
        : { ok: false, refusal: { code: 'tyre-size-ambiguous', choices: beadSeats } },
    );
  });

  test('[Y16] every bead seat that is known stands in the table, and each size once', () => {
    const inTable = new Set(rows.flatMap(({ beadSeats }) => beadSeats));
    expect([...inTable].sort((a, b) => a - b)).toEqual(knownBeadSeats);
    expect(new Set(rows.map(({ size }) => size)).size).toBe(rows.length);
  });
});
