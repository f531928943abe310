/** The log of a record in sentences: every kind of event of the golden logs, and what its sentence must tell. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema, type JobEvent, replay } from '../../src/engine/job';
import { namesFrom } from '../../src/words';
import { loggedSentence } from '../../src/words/record';
import { type GoldenRecord, goldenNames } from '../golden/record';

const records = goldenNames.map((name): GoldenRecord => {
  const file = new URL(`../golden/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8'));
});

const said = records.flatMap(({ entries, plan, names }) => {
  const state = replay(entries, plan);
  const people = Object.entries(names).map(([id, name]) => ({ id, name }));
  const book = { state, names: namesFrom(plan, people) };
  return entries.map(({ event }) => ({
    event: event as JobEvent, // golden logs hold events that the schema reads
    text: loggedSentence(event, book).replaceAll('\u00a0', ' '),
  }));
});

function saidOf(kind: JobEvent['kind']): readonly string[] {
  return said.filter(({ event }) => event.kind === kind).map(({ text }) => text);
}

describe('every entry of a golden log', () => {
  test('is a sentence of its own words, and none is empty of facts', () => {
    const known = eventSchema.def.options.flatMap(({ shape }) => shape.kind.def.values);
    for (const kind of known) {
      const sentences = saidOf(kind);
      expect(sentences.length, kind).toBeGreaterThan(0);
      for (const text of sentences) {
        expect(text, kind).toMatch(/^[A-Z]/);
        expect(text, kind).not.toMatch(/undefined|null|NaN|\[object/);
        expect(text).not.toBe(kind.replaceAll('-', ' '));
      }
    }
  });

  test('says what was measured, where, how much, and how it was judged', () => {
    for (const { event, text } of said) {
      if (event.kind !== 'measure-taken') continue;
      expect(text).toMatch(/^Measured: .+, \d+(\.\d+)? .+, (inside|outside|too near) .*; at: .+/);
      expect(text).not.toContain(event.measure);
    }
    // 325 kPa is 3.3 bar and 47 psi (1 psi = 6.894 757 kPa, NIST SP 811).
    expect(saidOf('measure-taken')).toContainEqual(
      expect.stringMatching(
        /^Measured: Front tyre pressure, 3\.3 bar \(47 psi\), inside its limits; at: \w+/,
      ),
    );
  });

  test('says of a tightened joint which wrench was set to what, the figure and its source', () => {
    for (const { event, text } of said) {
      if (event.kind !== 'joint-tightened') continue;
      const { wrench, figure, onScale } = event;
      expect(text).toContain(`wrench ${wrench.id} (${wrench.name}) set to `);
      expect(text).toContain(` ${wrench.unit}`);
      expect(text).toContain(String(Number(onScale.toFixed(2))));
      expect(text).toMatch(/; figure .+ N·m, .+; each bolt ends between .+ and .+ N·m/);
      if (figure.source.kind === 'part') expect(text).toContain(`“${figure.source.printed}”`);
      if (figure.source.kind === 'document') expect(text).toContain(figure.source.reference);
    }
  });

  test('says who signed as what', () => {
    expect(saidOf('signed').map((text) => text.split(/[,;]/)[0])).toEqual(
      expect.arrayContaining([
        'Signed as built',
        'Signed as checked by somebody else',
        'Signed as received by the customer',
      ]),
    );
  });

  test('says of a finding how bad it is, and what became of it, in words', () => {
    expect(saidOf('finding-raised')).toEqual(
      expect.arrayContaining([expect.stringMatching(/^Finding, stop-ride: Bell is quiet/)]),
    );
    expect(saidOf('finding-allowed')[0]).toBe(
      'Finding let go by a supervisor: Bell is quiet (stop-ride); the reason: The customer has a louder one.',
    );
    expect(saidOf('finding-closed')[0]).toMatch(/^Finding put right: .+; what was done: .+/);
  });

  test('names contents, holds and what the customer was told', () => {
    expect(saidOf('contents-checked').join()).toMatch(/present: .+, .+/);
    expect(saidOf('job-held').join()).toMatch(/Put on hold, waits for /);
    expect(saidOf('handed-over')[0]).toMatch(
      /^Handed over; told about the fit, .+; first check by \d+ \w+ \d{4}; the (left|right) lever works the front brake$/,
    );
  });
});

test('what a wrench showed at each bolt is said, the last of each, with how it was judged', () => {
  const { event } = said.find((one) => one.event.kind === 'joint-tightened') ?? missing();
  const readings = [
    { bolt: 2, value: 5.9, text: '5.90', judged: 'undecided' },
    { bolt: 1, value: 7, text: '7.0', judged: 'outside' },
    { bolt: 1, value: 5.2, text: '5.20', judged: 'inside' },
  ];
  const [record] = records;
  const book = { state: replay([]), names: namesFrom(record?.plan) };
  expect(loggedSentence({ ...event, readings } as JobEvent, book)).toContain(
    'read: bolt 1 5.20, inside its figure; bolt 2 5.90, too near its end to tell',
  );
});

test('a kind of entry that only a later release knows is named as it is', () => {
  const book = { state: replay([]), names: namesFrom(undefined) };
  expect(loggedSentence({ kind: 'frame-weighed' }, book)).toBe('frame weighed');
});

function missing(): never {
  throw new Error('a golden log has a tightened joint');
}
