/** What people do with jobs, by whoever is at the stand. */

import { ok, type Refusal, type Result, refuse } from '../engine/base';
import { verifyLog } from '../engine/integrity';
import type { JobState } from '../engine/job';
import type { Person } from '../storage/contract';
import { allowFinding } from './allow-finding';
import { confirmJoints } from './confirm-joints';
import { createJobStores } from './job-stores';
import { loadJob } from './load-job';
import { createPerform, type Perform, type Performed } from './perform';
import type { AppPorts } from './ports';
import { receiveBox, receiveDelivery } from './receive-boxes';
import type { JobActions, LivingData, NobodyAtTheStand } from './services';
import { checkSignatures, wrongSignatures } from './signature-check';
import { handOver, sealCode, sign } from './signing';
import { startJob } from './start-job';
import { attempted } from './storage-refusals';

export function createJobActions(
  ports: AppPorts,
  { rack, figures, shop, durability }: LivingData,
  person: () => Person | undefined,
): JobActions {
  const { storage, clock, device } = ports;
  const { perform, isOwn } = remembering(createPerform({ storage, clock, device }));
  const openJobStore = createJobStores({ storage, perform, rack, person, isOwn });
  const withPerform = { ...ports, perform };

  function byPerson<T, R extends Refusal>(
    work: (person: Person) => Promise<Result<T, R>>,
  ): Promise<Result<T, R | NobodyAtTheStand>> {
    const actor = person();
    if (actor === undefined) return Promise.resolve(refuse({ code: 'nobody-at-the-stand' }));
    return work(actor);
  }

  /** The first thing worth keeping is the moment to ask the browser to keep it. */
  function askOnce(): void {
    if (durability.getState().answer !== 'may-be-cleared') return;
    void ports.askToKeep().then((answer) => durability.setState(answer));
  }

  return {
    openJobStore: async (job) => openJobStore(job),
    async receiveBox(box) {
      const received = await byPerson((actor) => receiveBox(withPerform, box, actor));
      if (received.ok) askOnce();
      return received;
    },
    startJob: (job) =>
      byPerson(async (actor) => {
        const market = () => shop.getState().market;
        const rows = () => figures.getState().rows;
        return stateIn(await startJob({ ...withPerform, figures: rows, market }, job, actor));
      }),
    async readDeliveryList(text) {
      const known = rack.getState().rows.map(({ frameNumber }) => frameNumber);
      return ports.readDeliveryList(text, {
        knownFrameNumbers: new Set(known),
        today: clock.today(),
      });
    },
    async keepDeliveries(rows) {
      const kept = await byPerson((actor) => receiveDelivery(ports, rows, actor));
      if (kept.ok) askOnce();
      return kept;
    },
    sign: ({ job, meaning, pin }) =>
      byPerson(async (actor) =>
        stateIn(await sign(withPerform, job, meaning, { person: actor, pin })),
      ),
    allowFinding: (asked) => allowFinding(withPerform, asked),
    confirmJoints: (asked) => confirmJoints(withPerform, asked),
    handOver: ({ job, pin, ...handing }) =>
      byPerson(async (actor) =>
        stateIn(await handOver(withPerform, job, handing, { person: actor, pin })),
      ),
    async checkLog(job) {
      const read = await attempted(
        async () => [await storage.log(job), await storage.row(job)] as const,
      );
      if (!read.ok) return read;
      const [{ entries }, row] = read.value;
      const signatures = wrongSignatures(await checkSignatures(ports, job));
      return verifyLog(entries, { job, signatures, ...(row && { heads: row.heads }) });
    },
    checkSignatures: (job) => checkSignatures(ports, job),
    sealCode: (job) => sealCode(ports, job),
    bikeOf: async (job) => (await loadJob(storage, job))?.state.bike,
    findByFrameNumber: (text) => storage.findByFrameNumber(text.trim().toUpperCase()),
    customerOf: (digest) => storage.customers.get(digest),
    photo: (digest) => storage.blob(digest),
    async keepPhoto(picked) {
      const photo = await ports.photoFrom(picked);
      if (!photo.ok) return photo;
      const kept = await storage.keepBlob(photo.value);
      return kept.ok ? ok(photo.value.digest) : kept;
    },
  };
}

function stateIn<R extends Refusal>(done: Result<Performed, R>): Result<JobState, R> {
  return done.ok ? ok(done.value.state) : done;
}

/** Knows which entries this window wrote, so that only what came from elsewhere is announced. */
function remembering(perform: Perform): {
  readonly perform: Perform;
  readonly isOwn: (entry: string) => boolean;
} {
  const written = new Set<string>();
  return {
    perform: async (...asked) => {
      const done = await perform(...asked);
      if (done.ok) for (const { id } of done.value.entries) written.add(id);
      return done;
    },
    isOwn: (entry) => written.has(entry),
  };
}
