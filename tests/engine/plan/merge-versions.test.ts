import { describe, expect, test } from 'vitest';
import { type CatalogueVersion, mergeVersions } from '../../../src/engine/plan';
import { adding, versionOf } from '../../support/shop-versions';

const words = (how: string) => ({ kind: 'change-words', step: 'bar', words: { how } });
const shared = versionOf(1, [words('Slide it in.')], { id: 'shared' });
const mine = (changes: unknown[]) => versionOf(2, changes, { id: 'mine' });
const theirs = (changes: unknown[]) => versionOf(2, changes, { id: 'theirs', by: 'Tom Ashdown' });

function merged(one: readonly CatalogueVersion[], other: readonly CatalogueVersion[]) {
  const result = mergeVersions(one, other);
  if (!result.ok) throw new Error(result.refusal.code);
  return result.value;
}

describe('two sides', () => {
  test('[P47] that have the same have nothing to bring', () => {
    expect(merged([shared], [shared])).toEqual({ incoming: [], conflicts: [] });
  });

  test('[P47] bring what the other lacks, in order', () => {
    const further = versionOf(3, [adding({ id: 'own-tag' })]);
    const other = theirs([{ kind: 'switch-off', step: 'papers' }]);
    const { incoming, conflicts } = merged(
      [shared, mine([words('Push it in.')])],
      [further, other, shared],
    );
    expect(incoming.map(({ id }) => id)).toEqual(['theirs', 'v3']);
    expect(conflicts).toEqual([]);
  });

  test.each<[situation: string, mine: unknown, theirs: unknown, subject: string]>([
    ['one step’s words', words('Push it in.'), words('Lay it in.'), 'words bar'],
    [
      'one switch',
      { kind: 'switch-off', step: 'papers' },
      { kind: 'switch-on', step: 'papers' },
      'switch papers',
    ],
    [
      'one effort',
      { kind: 'set-effort', step: 'bar', effort: [1, 2, 3] },
      { kind: 'set-effort', step: 'bar', effort: [1, 2, 4] },
      'effort bar',
    ],
    [
      'one own step',
      adding({ id: 'own-tag' }),
      adding({ id: 'own-tag', why: 'So.' }),
      'step own-tag',
    ],
    [
      'one figure, however its make is typed',
      { kind: 'approve-figure', make: 'Any', model: 'One', joint: 'bar', figure: { max: 5 } },
      { kind: 'approve-figure', make: 'ANY', model: 'One', joint: 'bar', figure: { max: 6 } },
      'figure any|one|bar',
    ],
  ])('[P47] that set %s apart, and not to the same, are told', (_, one, other, subject) => {
    const [conflict, ...more] = merged([shared, mine([one])], [shared, theirs([other])]).conflicts;
    expect(more).toEqual([]);
    expect(conflict).toMatchObject({
      subject,
      mine: { version: { by: 'Petra Lindqvist' } },
      theirs: { version: { by: 'Tom Ashdown' } },
    });
  });

  test('[P47] that set one thing to the same do not contradict each other', () => {
    const same = [words('Lay it in.')];
    expect(merged([shared, mine(same)], [shared, theirs(same)]).conflicts).toEqual([]);
  });

  test('[P47] of which one was altered are refused', () => {
    const altered = { ...shared, reason: 'Somebody wrote over this.' };
    const refusal = { code: 'catalogue-version-altered', version: 1, by: 'Petra Lindqvist' };
    expect(mergeVersions([shared], [altered])).toEqual({ ok: false, refusal });
    expect(mergeVersions([], [shared, altered])).toEqual({ ok: false, refusal });
  });
});
