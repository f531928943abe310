/** Writes a copy of the whole shop: readable without this app, and without anybody's secrets. */

import { orderLog } from '../engine/integrity';
import { base64FromBytes } from './base64';
import { type Copy, copyFormat, copyVersion } from './copy.schema';
import type { Holdings } from './holdings';

export function writeCopy({
  holdings,
  publicKeys,
  at,
}: {
  readonly holdings: Holdings;
  readonly publicKeys: readonly { readonly id: string; readonly keys: readonly unknown[] }[];
  readonly at: string;
}): string {
  const { rows, entries, plans, people, customers, tools, figures, blobs, settings } = holdings;
  const { catalogueVersions = [] } = holdings;
  const shop = settings.find(({ id }) => id === 'shop')?.value;
  const copy = {
    format: copyFormat,
    version: copyVersion,
    at,
    shop,
    jobs: rows.map(({ job, heads }) => ({
      job,
      heads,
      entries: orderLog(entries.filter((entry) => entry.job === job)),
    })),
    plans,
    people: people.map(({ id, name, roles, active }) => ({ id, name, roles, active })),
    customers,
    tools,
    figures,
    catalogueVersions,
    blobs: blobs.map(({ digest, type, bytes }) => ({
      digest,
      type,
      base64: base64FromBytes(bytes),
    })),
    publicKeys,
  } satisfies Record<keyof Copy, unknown>;
  return `${JSON.stringify(copy, null, 1)}\n`;
}
