/** The order of versions, the same on every device, and which of them still count. */

import { compareText } from '../base';
import type { CatalogueVersion } from './shop-change.schema';

/** By number; two that were written apart under the same number, by id. */
export function orderVersions(versions: readonly CatalogueVersion[]): readonly CatalogueVersion[] {
  return [...versions].sort((a, b) => a.version - b.version || compareText(a.id, b.id));
}

/** In order, without those that a later one has taken back; what takes back may itself be taken back. */
export function countingVersions(
  versions: readonly CatalogueVersion[],
): readonly CatalogueVersion[] {
  const takenBack = new Set<string>();
  const counting: CatalogueVersion[] = [];
  for (const version of [...orderVersions(versions)].reverse()) {
    if (takenBack.has(version.id)) continue;
    counting.push(version);
    for (const change of version.changes)
      if (change.kind === 'take-back') takenBack.add(change.version);
  }
  return counting.reverse();
}

/** The number that a new version gets. */
export function nextVersion(versions: readonly CatalogueVersion[]): number {
  return versions.reduce((highest, { version }) => Math.max(highest, version), 0) + 1;
}
