/** Writes a copy of the whole shop in one piece of JSON, as the first version of the app did; copies of it must be read for ever. */

import { orderLog } from '../../src/engine/integrity';
import { base64FromBytes } from '../../src/exchange/base64';
import { type Copy, copyFormat, copyVersion } from '../../src/exchange/copy.schema';
import type { Holdings } from '../../src/exchange/holdings';

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
