/** Every code of a damaged log belongs to one kind. */

import { expect, test } from 'vitest';
import {
  type DamageKind,
  damageKinds,
  type Entry,
  kindOfDamage,
  seal,
  verifyLog,
} from '../../../src/engine/integrity';
import { chain, forkAndJoin, unsealed, written } from '../../support/written-log';

const [one, two, three] = chain(3) as [Entry, Entry, Entry];
const { root, b, a, join } = forkAndJoin();
const misplaced = seal(unsealed({ seq: 2, lamport: 5, parents: [one.id] }));
const unseeing = seal(unsealed({ seq: 2, lamport: 1, parents: [] }));
const foreign = seal(unsealed({ job: 'job-2', seq: 2, lamport: 2, parents: [one.id] }));
const sealed = seal(unsealed({ event: { kind: 'handed-over', v: 1 } }));
const late = seal(unsealed({ seq: 2, lamport: 2, parents: [sealed.id] }));
const found = (code: 'signer-unknown' | 'signature-wrong') => ({
  signatures: new Map([[two.id, code]]),
});

const rows: [DamageKind, string, readonly unknown[], Parameters<typeof verifyLog>[1]][] = [
  ['malformed', 'no entry at all', [one, 7], {}],
  ['changed', 'another person', [one, { ...two, by: 'x' }], {}],
  ['missing', 'a hole', [one, three], {}],
  ['missing', 'a lost branch', [root, a, join], {}],
  ['missing', 'a cut end', [one, two], { heads: [three.id] }],
  ['reordered', 'a file in another order', [one, three, two], { inOrder: true }],
  ['reordered', 'an entry twice in a file', [one, one, two], { inOrder: true }],
  ['reordered', 'a lamport that jumps', [one, misplaced], { job: 'job-1' }],
  ['reordered', 'a writer that did not see itself', [one, unseeing], { job: 'job-1' }],
  ['forked', 'two in one place', [root, a, written([root], 'tablet-a', 'other')], {}],
  ['foreign', 'another job', [one, foreign], { job: 'job-1' }],
  ['added', 'more than was signed', [root, a, b], { heads: [a.id] }],
  ['unknown-signer', 'a stranger’s signature', [one, two], found('signer-unknown')],
  ['bad-signature', 'a signature over something else', [one, two], found('signature-wrong')],
  ['after-seal', 'a step after the hand-over', [sealed, late], {}],
];

test.each(rows)('[I23] %s: %s', (kind, _, entries, expected) => {
  const answer = verifyLog(entries, expected);
  expect(answer.ok ? 'whole' : kindOfDamage(answer.refusal)).toBe(kind);
});

test('[I23] every kind is shown by one of these rows', () => {
  expect([...new Set(rows.map(([kind]) => kind))].sort()).toEqual([...damageKinds].sort());
});
