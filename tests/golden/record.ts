/** A golden record: a sealed log as a release wrote it, and what it must mean for ever. */

import type { ClaimedTime, Entry } from '../../src/engine/integrity';
import { headsOf } from '../../src/engine/integrity';
import { type JobPlan, replay } from '../../src/engine/job';
import { type Sheet, sheetOf } from '../../src/engine/sheet';

export interface GoldenRecord {
  readonly job: string;
  /** What the sheet needs from outside the log. */
  readonly shop: string;
  readonly customer: string;
  readonly names: Readonly<Record<string, string>>;
  readonly on: ClaimedTime['claimed'];
  /** Public keys (JWK) of everyone who signed. */
  readonly publicKeys: Readonly<Record<string, readonly unknown[]>>;
  readonly heads: readonly string[];
  readonly sheet: unknown;
  readonly plan: JobPlan;
  readonly entries: readonly Entry[];
}

export const goldenNames = ['mountain-bike', 'town-bike', 'apprentice-bike'] as const;
export type GoldenName = (typeof goldenNames)[number];

/** The sheet that the log gives today, as JSON would keep it. */
export function sheetToday(
  record: Omit<GoldenRecord, 'heads' | 'sheet'>,
  entries: readonly Entry[] = record.entries,
): Sheet {
  const { job, plan, shop, customer, names, on } = record;
  const sheet = sheetOf({
    job,
    state: replay(entries, plan),
    heads: headsOf(entries),
    entries: entries.length,
    shop,
    nameOf: (id) => names[id] ?? id,
    customer,
    on,
  });
  if (sheet === undefined) throw new Error(`the golden log of ${job} opens no job`);
  return JSON.parse(JSON.stringify(sheet));
}
