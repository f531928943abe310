/** A thousand jobs with photos out into one file and back in: how long, and how much memory it takes at most. */

import { mkdtempSync, openAsBlob, rmSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { digestOf, digestOfBytes, type Entry, seal } from '../../src/engine/integrity';
import { createRecordFiles } from '../../src/exchange/record-files';
import { createKeys } from '../../src/platform/keys';
import { lookAtFile } from '../../src/state/look-at-file';
import { takeInRecords } from '../../src/state/take-in-records';
import { writeRecords } from '../../src/state/write-records';
import type { JobRow, KeptBlob, Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createFixedClock } from '../support/fixed-clock';
import { readGolden } from './golden-log';

const jobs = Number(process.env.JOBS ?? '1000');
const photosEach = 3;
const photoSize = 250_000;
const mega = 2 ** 20;

const folder = mkdtempSync(join(tmpdir(), 'standbook-bench-'));
try {
  await measure(join(folder, 'shop.zip'));
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function measure(file: string): Promise<void> {
  const { plan, entries } = readGolden('mountain-bike');
  console.log(
    `${jobs} jobs of ${entries.length} entries, each with ${photosEach} photos of ${photoSize / 1000} kB, Node ${process.versions.node}`,
  );
  const recordFiles = createRecordFiles('What this is.\n');
  const clock = createFixedClock();

  const shop = madeAsRead(entries, plan);
  const ports = { storage: shop, clock, device: 'bench', recordFiles };
  const handle = await open(file, 'w');
  await timed('export', async () => {
    const written = await writeRecords(
      ports,
      { withCustomers: true },
      {
        write: async (bytes) => void (await handle.write(bytes)),
        close: () => handle.close(),
        abandon: () => handle.close(),
      },
    );
    if (!written.ok) throw new Error(JSON.stringify(written.refusal));
  });
  console.log(`the file is ${(statSync(file).size / mega).toFixed(0)} MB`);

  const blank = forgetful();
  const into = { storage: blank, recordFiles, keys: createKeys(blank.keys) };
  const picked = await openAsBlob(file);
  const looked = await timed('verify everything', async () => {
    const answer = await lookAtFile(into, picked);
    if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
    if (answer.value.refused.length > 0) throw new Error(JSON.stringify(answer.value.refused[0]));
    return answer.value;
  });
  await timed('take in', async () => {
    const taken = await takeInRecords(into, looked);
    if (!taken.ok || taken.value.fresh !== jobs) throw new Error(JSON.stringify(taken));
  });
}

/** How long, and the most memory above where it began. */
async function timed<T>(what: string, work: () => Promise<T>): Promise<T> {
  globalThis.gc?.();
  const before = process.memoryUsage().rss;
  let most = before;
  const watch = setInterval(() => {
    most = Math.max(most, process.memoryUsage().rss);
  }, 20);
  const began = performance.now();
  const answer = await work();
  const seconds = (performance.now() - began) / 1000;
  clearInterval(watch);
  const above = Math.max(0, most - before) / mega;
  console.log(
    `${what.padEnd(18)} ${seconds.toFixed(1).padStart(7)} s  ${(jobs / seconds).toFixed(0).padStart(5)} jobs a second  at most ${above.toFixed(0)} MB more than before`,
  );
  return answer;
}

/** A shop whose logs and photos are made at the moment they are read, so that none of the memory measured is theirs. */
function madeAsRead(
  golden: readonly Entry[],
  plan: ReturnType<typeof readGolden>['plan'],
): Storage {
  const storage = createMemoryStorage();
  const ids = Array.from({ length: jobs }, (_, n) => `bench-job-${String(n).padStart(5, '0')}`);
  const photos = new Map<string, number>();
  const bytesOf = (seed: number): Uint8Array => {
    const bytes = new Uint8Array(photoSize);
    let state = seed + 1;
    for (let at = 0; at < photoSize; at += 1) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      bytes[at] = state >>> 24;
    }
    bytes.set([0xff, 0xd8, 0xff]);
    return bytes;
  };
  const logOf = (job: string) => {
    const number = ids.indexOf(job);
    const pictures = Array.from({ length: photosEach }, (_, n) => {
      const seed = number * photosEach + n;
      const digest = digestOfBytes(bytesOf(seed));
      photos.set(digest, seed);
      return digest;
    });
    return { entries: relinked(golden, job, pictures), plan };
  };
  return {
    ...storage,
    rows: async () => ids.map((job) => ({ job, heads: [digestOf(job)], count: 1 }) as never), // all that writing reads of them
    log: async (job) => logOf(job),
    async blob(digest): Promise<KeptBlob | undefined> {
      const seed = photos.get(digest);
      return seed === undefined ? undefined : { digest, type: 'image/jpeg', bytes: bytesOf(seed) };
    },
  };
}

/** The golden log as another job's, with photos of its own in front. */
function relinked(golden: readonly Entry[], job: string, photos: readonly string[]): Entry[] {
  const newIds = new Map<string, string>();
  return golden.map(({ id, ...content }) => {
    const parents = content.parents.map((parent) => newIds.get(parent) ?? parent);
    const event =
      content.event.kind === 'box-received' ? { ...content.event, photos } : content.event;
    const entry = seal({ ...content, job, parents, event });
    newIds.set(id, entry.id);
    return entry;
  });
}

/** Keeps rows and nothing else, as a disk would keep the rest out of memory. */
function forgetful(): Storage {
  const storage = createMemoryStorage();
  const rows = new Map<string, JobRow>();
  return {
    ...storage,
    rows: async () => [...rows.values()],
    log: async () => ({ entries: [] }),
    async changeJob(job, _, work) {
      const answer = work({ log: { entries: [] } });
      if (answer.ok) rows.set(job, answer.value.row);
      return answer;
    },
  };
}
