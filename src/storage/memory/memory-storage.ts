/** Storage in memory, for tests and trials: keeps every promise of the contract but the disk. */

import { ok, refuse } from '../../engine/base';
import type { Entry } from '../../engine/integrity';
import type { JobPlan } from '../../engine/job';
import type { CatalogueVersion } from '../../engine/plan';
import type {
  Customer,
  HeldJob,
  JobRow,
  JobWrite,
  KeptBlob,
  KeptKey,
  KnownFigure,
  Person,
  Setting,
  Storage,
  Tool,
} from '../contract';
import { lastOfDays } from '../days';
import { isSameHeads } from '../heads';
import { planDigestIn } from '../plan-of-log';
import { createMemoryShelf } from './memory-shelf';

function shelfById<Row extends { readonly id: string }>() {
  return createMemoryShelf<Row>((row) => row.id);
}

export function createMemoryStorage(): Storage {
  const entriesByJob = new Map<string, readonly Entry[]>();
  const plansByDigest = new Map<string, JobPlan>();
  const blobsByDigest = new Map<string, KeptBlob>();
  const rows = createMemoryShelf<JobRow>((row) => row.job);
  const customers = createMemoryShelf<Customer>((customer) => customer.digest);
  const byId = {
    people: shelfById<Person>(),
    tools: shelfById<Tool>(),
    figures: shelfById<KnownFigure>(),
    settings: shelfById<Setting>(),
    catalogueVersions: shelfById<CatalogueVersion>(),
    keys: shelfById<KeptKey>(),
  };

  function logOf(job: string): NonNullable<HeldJob['log']> {
    const entries = entriesByJob.get(job) ?? [];
    const plan = plansByDigest.get(planDigestIn(entries) ?? '');
    return plan === undefined ? { entries } : { entries, plan };
  }

  function keep({ entries, row, plan, blobs, customer, customers: named = [] }: JobWrite): void {
    entriesByJob.set(row.job, [...(entriesByJob.get(row.job) ?? []), ...entries]);
    rows.rowsById.set(row.job, row);
    if (plan) plansByDigest.set(plan.digest, plan.plan);
    for (const blob of blobs ?? []) blobsByDigest.set(blob.digest, blob);
    const signers = customer === undefined ? named : [customer, ...named];
    for (const each of signers) customers.rowsById.set(each.digest, each);
    rows.tell();
    if (signers.length > 0) customers.tell();
  }

  return {
    async changeJob(job, seen, work) {
      const row = rows.rowsById.get(job);
      const isSeen = row !== undefined && isSameHeads(row.heads, seen);
      const answer = work({ ...(row && { row }), ...(!isSeen && { log: logOf(job) }) });
      if (answer.ok) keep(answer.value);
      return answer;
    },
    async addJobs(writes) {
      const taken = writes.find(({ row }) => rows.rowsById.has(row.job));
      if (taken) return refuse({ code: 'storage-failed', cause: `job ${taken.row.job} exists` });
      for (const write of writes) keep(write);
      return ok(writes.length);
    },
    row: rows.get,
    rows: rows.all,
    log: async (job) => logOf(job),
    watchRows: rows.watch,
    async findByFrameNumber(frameNumber) {
      return [...rows.rowsById.values()].filter((row) => row.frameNumber === frameNumber);
    },
    async findByWrench(wrench, { since, until = lastOfDays }) {
      return [...rows.rowsById.values()].filter(({ wrenchDays }) =>
        wrenchDays.some(([id, day]) => id === wrench && day >= since && day <= until),
      );
    },
    blob: async (digest) => blobsByDigest.get(digest),
    async keepBlob(blob) {
      blobsByDigest.set(blob.digest, blob);
      return ok(true);
    },
    ...byId,
    customers,
    async holdings() {
      return {
        entries: [...entriesByJob.values()].flat(),
        rows: await rows.all(),
        plans: [...plansByDigest].map(([digest, plan]) => ({ digest, plan })),
        blobs: [...blobsByDigest.values()],
        people: await byId.people.all(),
        customers: await customers.all(),
        tools: await byId.tools.all(),
        figures: await byId.figures.all(),
        settings: await byId.settings.all(),
        catalogueVersions: await byId.catalogueVersions.all(),
      };
    },
    async takeIn(holdings) {
      const jobs = rows.rowsById.size;
      if (jobs + byId.people.rowsById.size > 0) return refuse({ code: 'shop-not-empty', jobs });
      for (const row of holdings.rows) {
        keep({ row, entries: holdings.entries.filter((entry) => entry.job === row.job) });
      }
      for (const { digest, plan } of holdings.plans) plansByDigest.set(digest, plan);
      for (const blob of holdings.blobs) blobsByDigest.set(blob.digest, blob);
      await byId.people.putAll(holdings.people);
      await customers.putAll(holdings.customers);
      await byId.tools.putAll(holdings.tools);
      await byId.figures.putAll(holdings.figures);
      await byId.settings.putAll(holdings.settings);
      await byId.catalogueVersions.putAll(holdings.catalogueVersions ?? []);
      await byId.keys.putAll(holdings.keys ?? []);
      return ok(true);
    },
    async eraseEverything({ settings = [], keys = [], people = [] } = {}) {
      for (const map of [entriesByJob, plansByDigest, blobsByDigest]) map.clear();
      for (const each of [rows, customers, ...Object.values(byId)]) {
        each.rowsById.clear();
        each.tell();
      }
      for (const row of settings) byId.settings.rowsById.set(row.id, row);
      for (const row of keys) byId.keys.rowsById.set(row.id, row);
      for (const row of people) byId.people.rowsById.set(row.id, row);
    },
    onTrouble: () => () => undefined,
    close: () => undefined,
  };
}
