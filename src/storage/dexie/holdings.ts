/** The whole shop, out of the database and into an empty one. */

import { ok, type Result, refuse } from '../../engine/base';
import type { Holdings, ShopNotEmpty, StorageRefusal } from '../contract';
import { committed } from './committed';
import type { Connection } from './connection';
import type { Database } from './database';
import { blobRow, keptBlob } from './job-writes';

export function readHoldings({ database, demand }: Connection): Promise<Holdings> {
  return demand(() =>
    database.transaction('r', database.tables, async () => ({
      entries: await database.entries.toArray(),
      rows: await database.jobs.toArray(),
      plans: await database.plans.toArray(),
      blobs: (await database.blobs.toArray()).map(keptBlob),
      people: await database.people.toArray(),
      customers: await database.customers.toArray(),
      tools: await database.tools.toArray(),
      figures: await database.catalogue.toArray(),
      settings: await database.settings.toArray(),
      catalogueVersions: await database.catalogueVersions.toArray(),
    })),
  );
}

export async function takeInHoldings(
  { database, attempt }: Connection,
  holdings: Holdings,
): Promise<Result<true, ShopNotEmpty | StorageRefusal>> {
  const kept = await attempt(() =>
    committed(database, database.tables, async (): Promise<Result<true, ShopNotEmpty>> => {
      const jobs = await database.jobs.count();
      const people = await database.people.count();
      if (jobs + people > 0) return refuse({ code: 'shop-not-empty', jobs });
      await putHoldings(database, holdings);
      return ok(true);
    }),
  );
  return kept.ok ? kept.value : kept;
}

function putHoldings(database: Database, holdings: Holdings): PromiseLike<unknown> {
  return Promise.all([
    database.entries.bulkAdd(holdings.entries),
    database.jobs.bulkAdd(holdings.rows),
    database.plans.bulkPut(holdings.plans),
    database.blobs.bulkPut(holdings.blobs.map(blobRow)),
    database.people.bulkAdd(holdings.people),
    database.customers.bulkPut(holdings.customers),
    database.tools.bulkPut(holdings.tools),
    database.catalogue.bulkPut(holdings.figures),
    database.settings.bulkPut(holdings.settings),
    database.keys.bulkPut(holdings.keys ?? []),
    database.catalogueVersions.bulkPut(holdings.catalogueVersions ?? []),
  ]);
}
