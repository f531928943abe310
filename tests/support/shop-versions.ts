/** A shop's versions for tests: rows that say only what matters, parsed through the schema. */

import {
  type CatalogueVersion,
  catalogueVersionSchema,
  type OwnStep,
  ownStepSchema,
  type ShopChange,
} from '../../src/engine/plan';

export function versionOf(
  version: number,
  changes: readonly unknown[],
  about: Partial<CatalogueVersion> = {},
): CatalogueVersion {
  return catalogueVersionSchema.parse({
    id: `v${version}`,
    version,
    at: { claimed: '2026-11-25T15:00:00+00:00', zone: 'Europe/London' },
    by: 'Petra Lindqvist',
    reason: 'It was asked for at the stand.',
    changes,
    ...about,
  });
}

export function ownStep(row: { readonly id: string } & Record<string, unknown>): OwnStep {
  return ownStepSchema.parse({
    zone: 'frame',
    place: 'whole-bike',
    title: `Do ${row.id}`,
    how: 'Do it with care.',
    why: 'The shop wants it.',
    right: 'It is done.',
    effort: [1, 2, 3],
    ...row,
  });
}

export function adding(
  row: { readonly id: string } & Record<string, unknown>,
  lookedAtBy: string[] = [],
): ShopChange {
  return { kind: 'add-step', step: ownStep(row), lookedAtBy };
}
