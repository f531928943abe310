/** The kinds of damage that a verified log can show, so that nobody has to know every code. */

import type { LogDamaged } from './verify-log';

export const damageKinds = [
  'malformed',
  'changed',
  'missing',
  'reordered',
  'forked',
  'foreign',
  'added',
  'unknown-signer',
  'bad-signature',
  'after-seal',
] as const;
export type DamageKind = (typeof damageKinds)[number];

const kindByCode = {
  'entry-malformed': 'malformed',
  'entry-changed': 'changed',
  'entry-missing': 'missing',
  'parent-missing': 'missing',
  'head-missing': 'missing',
  'entry-out-of-order': 'reordered',
  'lamport-wrong': 'reordered',
  'own-past-unseen': 'reordered',
  'seq-forked': 'forked',
  'entry-of-another-job': 'foreign',
  'head-unexpected': 'added',
  'signer-unknown': 'unknown-signer',
  'signature-wrong': 'bad-signature',
  'entry-after-seal': 'after-seal',
} as const satisfies Record<LogDamaged['code'], DamageKind>;

export function kindOfDamage({ code }: Pick<LogDamaged, 'code'>): DamageKind {
  return kindByCode[code];
}
