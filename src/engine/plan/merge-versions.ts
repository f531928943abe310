/** Two shops' or two tablets' versions brought together: by identity, with what contradicts said before anything is kept. */

import { ok, type Refusal, type Result, refuse } from '../base';
import { canonicalJson } from '../integrity';
import type { CatalogueVersion, ShopChange } from './shop-change.schema';
import { orderVersions } from './version-order';

/** One thing that both sides changed apart from each other, and not to the same. */
export interface ChangeConflict {
  readonly subject: string;
  readonly mine: VersionedChange;
  readonly theirs: VersionedChange;
}

export interface VersionedChange {
  readonly version: CatalogueVersion;
  readonly change: ShopChange;
}

export interface MergedVersions {
  /** What the other side has and this one lacks, in order. */
  readonly incoming: readonly CatalogueVersion[];
  readonly conflicts: readonly ChangeConflict[];
}

/** Refuses a version that both sides have under one identity, with different content: one of them was altered. */
export function mergeVersions(
  mine: readonly CatalogueVersion[],
  theirs: readonly CatalogueVersion[],
): Result<MergedVersions, VersionAltered> {
  const heldById = new Map(mine.map((version) => [version.id, version]));
  const twice = theirs.find(({ id }, index) => theirs.findIndex((one) => one.id === id) !== index);
  const altered =
    twice ??
    theirs.find((version) => {
      const held = heldById.get(version.id);
      return held !== undefined && canonicalJson(held) !== canonicalJson(version);
    });
  if (altered !== undefined)
    return refuse({ code: 'catalogue-version-altered', version: altered.version, by: altered.by });
  const theirIds = new Set(theirs.map(({ id }) => id));
  const incoming = orderVersions(theirs.filter(({ id }) => !heldById.has(id)));
  const onlyMine = orderVersions(mine.filter(({ id }) => !theirIds.has(id)));
  const theirsLast = lastBySubject(incoming);
  const conflicts = [...lastBySubject(onlyMine)].flatMap(([subject, one]) => {
    const other = theirsLast.get(subject);
    if (other === undefined || canonicalJson(other.change) === canonicalJson(one.change)) return [];
    return [{ subject, mine: one, theirs: other }];
  });
  return ok({ incoming, conflicts });
}

export type VersionAltered = Refusal & {
  readonly code: 'catalogue-version-altered';
  readonly version: number;
  readonly by: string;
};

/** What a change is about: two changes with one subject cannot both hold. */
export function subjectOf(change: ShopChange): string {
  switch (change.kind) {
    case 'add-step':
      return `step ${change.step.id}`;
    case 'add-joint':
      return `joint ${change.joint.id}`;
    case 'change-words':
      return `words ${change.step}`;
    case 'set-effort':
      return `effort ${change.step}`;
    case 'switch-off':
    case 'switch-on':
      return `switch ${change.step}`;
    case 'approve-figure':
      return `figure ${[change.make, change.model, change.joint].join('|').toLowerCase()}`;
    case 'take-back':
      return `version ${change.version}`;
  }
}

function lastBySubject(
  versions: readonly CatalogueVersion[],
): ReadonlyMap<string, VersionedChange> {
  return new Map(
    versions.flatMap((version) =>
      version.changes.map((change) => [subjectOf(change), { version, change }] as const),
    ),
  );
}
