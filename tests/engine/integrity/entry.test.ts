/** Entries: sealed by their content, frozen, never malformed. */

import { describe, expect, test } from 'vitest';
import type * as z from 'zod/mini';
import {
  digestOf,
  type Entry,
  entrySchema,
  seal,
  type UnsealedEntry,
} from '../../../src/engine/integrity';
import { unsealed } from '../../support/written-log';

describe('seal', () => {
  test('[I4] the id is the digest of the other members, whatever their order', () => {
    const content = unsealed();
    const reversed = Object.fromEntries(Object.entries(content).reverse());
    expect(seal(content).id).toBe(digestOf(content));
    expect(seal(reversed as unknown as UnsealedEntry).id).toBe(digestOf(content));
  });

  test('[I4] the id of this entry stays this id for ever', () => {
    // Computed apart from this program: sha256sum over the canonical text written by hand.
    expect(seal(unsealed()).id).toBe(
      'fb16605a434b4fa634fcad69075d9aca09c44c1d037f2a9a7d1b746e82be172b',
    );
  });

  test('[I4] a sealed entry is frozen through and through, and apart from what it was made of', () => {
    const event = { kind: 'point-looked-at', v: 1, found: { severity: 'stop-ride' } };
    const entry = seal({ ...unsealed(), event });
    expect(() => Object.assign(entry, { seq: 2 })).toThrow(TypeError);
    expect(() => Object.assign(entry.event.found, { severity: 'none' })).toThrow(TypeError);
    event.found.severity = 'none';
    expect(entry.event.found.severity).toBe('stop-ride');
  });

  test('[I4] every member changes the id', () => {
    const ids = [
      unsealed(),
      unsealed({ v: 2 }),
      unsealed({ job: 'job-2' }),
      unsealed({ device: 'tablet-b' }),
      unsealed({ seq: 2 }),
      unsealed({ lamport: 2 }),
      unsealed({ parents: [digestOf(1)] }),
      unsealed({ at: { claimed: '2026-11-25T10:00:01+01:00', zone: 'Europe/Berlin' } }),
      unsealed({ at: { claimed: '2026-11-25T10:00:00+01:00', zone: 'Europe/Paris' } }),
      unsealed({ by: 'person-2' }),
      unsealed({ event: { kind: 'step-reopened', v: 1 } }),
    ].map((content) => seal(content).id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each<[situation: string, changes: Record<string, unknown>]>([
    ['no person', { by: '' }],
    ['a seq of 0', { seq: 0 }],
    ['a seq that is no whole number', { seq: 1.5 }],
    ['a parent that is no digest', { parents: ['ABC'] }],
    ['a time without offset', { at: { claimed: '2026-11-25T10:00:00', zone: 'Europe/Berlin' } }],
    ['a time that is no time', { at: { claimed: 'yesterday', zone: 'Europe/Berlin' } }],
    ['an event without kind', { event: { v: 1 } }],
    ['an event without version', { event: { kind: 'step-done' } }],
    ['an event that is no object', { event: 'step-done' }],
    ['a function in the event', { event: { kind: 'step-done', v: 1, run: () => 1 } }],
  ])('[I5] throws on %s', (_, changes) => {
    expect(() => seal(unsealed(changes as Partial<UnsealedEntry>))).toThrow();
  });
});

test('[I5] the schema and the type agree, and members of later versions are kept', () => {
  const entry: Entry = seal(unsealed());
  const parsed: Entry = entrySchema.parse({ ...entry, later: true }) satisfies z.infer<
    typeof entrySchema
  >;
  expect(parsed).toEqual({ ...entry, later: true });
});
