/** The day's page: one digest over every record as it stands, to print and keep where nobody can change it. */

import type { Result } from '../engine/base';
import { shopDigest } from '../engine/integrity';
import type { JobRow, StorageRefusal } from '../storage/contract';
import type { AppPorts } from './ports';
import { attempted } from './storage-refusals';

export interface DayPage {
  readonly shop: string;
  /** ISO date. */
  readonly on: string;
  readonly at: string;
  readonly root: string;
  readonly count: number;
  /** Records that somebody worked on this day, as the tablets' clocks claimed. */
  readonly touched: readonly JobRow[];
  /** Signed by this tablet; absent where it can keep no key. */
  readonly code?: string;
}

export async function dayPage(
  { storage, keys, clock }: Pick<AppPorts, 'storage' | 'keys' | 'clock'>,
  shop: string,
): Promise<Result<DayPage, StorageRefusal>> {
  return attempted(async () => {
    const rows = await storage.rows();
    const { root, count } = shopDigest(rows);
    const on = clock.today();
    const code = await keys.signAsDevice({ shop, root, count, on });
    const touched = rows.filter(({ lastAt }) => lastAt?.slice(0, 10) === on);
    const at = clock.now().claimed;
    return { shop, on, at, root, count, touched, ...(code.ok && { code: code.value }) };
  });
}
