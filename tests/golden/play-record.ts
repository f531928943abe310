/** Plays one job from box to hand-over with a clock that is told the time and ids that are counted. */

import type { Bike } from '../../src/engine/bike';
import { digestOf, headsOf, orderLog } from '../../src/engine/integrity';
import { type Asked, pointById, topicsToTell } from '../../src/engine/job';
import {
  demoBikesSchema,
  demoFiguresSchema,
  demoPeopleSchema,
  demoToolsSchema,
} from '../../src/exchange/demo.schema';
import { createKeys } from '../../src/platform/keys';
import {
  type Bench,
  build,
  createPerform,
  does,
  figureKey,
  loadJob,
  lookedAt,
  type Perform,
  walk,
} from '../../src/state';
import { receiveBox } from '../../src/state/receive-boxes';
import { handOver, type SigningPorts, sign } from '../../src/state/signing';
import { startJob } from '../../src/state/start-job';
import type { Person, Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { readDemo, wrenchesOn } from '../support/demo-files';
import { createFixedClock, type FixedClock } from '../support/fixed-clock';
import { marketSeeds } from '../support/market-seeds';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';
import { type GoldenName, type GoldenRecord, sheetToday } from './record';

/** What happens to each bike besides being built: every kind of event is in one of the two logs. */
const plots = {
  'mountain-bike': {
    model: 'Hardtail 29',
    market: 'gb',
    customer: 'Ada Quill',
    missing: ['bell'],
    loosened: 'steerer-clamp',
    point: 'front-brake-disc',
  },
  'town-bike': {
    model: 'Town 7',
    market: 'nl',
    customer: 'Zoë Łęcka',
    missing: ['reflectors'],
    loosened: 'rear-axle-nuts',
    point: 'dynamo-lights',
  },
} as const;

type Plot = (typeof plots)[GoldenName];

interface Stage {
  readonly storage: Storage;
  readonly clock: FixedClock;
  readonly perform: Perform;
  readonly signing: SigningPorts;
  readonly people: ReadonlyMap<string, Person>;
  readonly shop: string;
  readonly bench: (person: string) => Bench;
  readonly job: string;
}

export async function playRecord(name: GoldenName): Promise<GoldenRecord> {
  const plot = plots[name];
  const stage = await setStage(name, plot);
  await work(stage, plot);
  await check(stage);
  await leave(stage, plot);
  return recordOf(stage, plot);
}

async function setStage(name: GoldenName, plot: Plot): Promise<Stage> {
  const storage = createMemoryStorage();
  const clock = createFixedClock('2026-11-25T09:00:00');
  const newId = countedIds(name);
  const keys = createKeys(storage.keys);
  const perform = createPerform({ storage, clock, device: 'golden-tablet' });
  const { shop, people: staff } = demoPeopleSchema.parse(readDemo('people.json'));
  const people = new Map<string, Person>();
  for (const { id, name: called, roles, pin } of staff) {
    must(await keys.createFor(id, pin));
    people.set(id, { id, name: called, roles, active: true, demoPin: pin });
  }
  const wrenches = wrenchesOn(
    clock.today(),
    demoToolsSchema.parse(readDemo('tools.json')).wrenches,
  );
  const { figures, markings } = demoFiguresSchema.parse(readDemo('figures.json'));
  const bench = (person: string): Bench => ({
    storage,
    perform,
    person: personIn(people, person),
    wrenches,
    printedOn: (joint, { make, model }) =>
      markings.find((row) => row.joint === joint && row.make === make && row.model === model)
        ?.printed,
    today: clock.today,
    spend: clock.pass,
  });

  const tomasz = personIn(people, 'tomasz');
  const box = {
    bike: bikeOf(plot.model),
    due: '2026-11-28T11:00',
    cartonDamage: 'One corner wet.',
  };
  const job = must(await receiveBox({ newId, perform }, box, tomasz));
  const bike = { ...box.bike, colour: 'Ink blue' };
  must(await perform(job, { kind: 'describe-bike', bike }, tomasz));
  const ports = {
    storage,
    perform,
    loadCatalogue: async () => ({
      catalogue: { ...seedCatalogue(), version: 'golden' },
      points: seedPoints(),
      markets: marketSeeds,
    }),
    figures: () =>
      figures.map((row) => ({ ...row, id: figureKey(row.make, row.model, row.joint) })),
    market: () => plot.market,
  };
  clock.pass(30);
  must(await startJob(ports, job, tomasz));
  const signing = { storage, perform, clock, keys, newId };
  return { storage, clock, perform, signing, people, shop: shop.name, bench, job };
}

/** Built with a part that comes late, walked, put right, loosened and shown good again. */
async function work(stage: Stage, { missing, loosened, point }: Plot): Promise<void> {
  const bench = stage.bench('tomasz');
  const act = (asked: Asked) => does(bench, stage.job, asked);
  await act({ kind: 'set-due', due: '2026-11-28T16:00' });
  await act({ kind: 'set-step-aside', step: 'wipe-down', reason: 'Cloth is in the wash.' });
  await build(bench, stage.job, { missing });
  await act({ kind: 'hold-job', for: 'part', note: 'Ordered from the maker.' });
  stage.clock.pass(180);
  await act({ kind: 'resume-job' });
  await act({
    kind: 'check-contents',
    parts: missing.map((part) => ({ part, state: 'present', note: 'Came by post.' })),
  });
  await build(bench, stage.job);
  await find(stage, point);
  await walk(bench, stage.job);
  await act({ kind: 'reopen-step', step: loosened, reason: 'Not straight.' });
  await build(bench, stage.job);
  await walk(bench, stage.job);
  await signedBy(stage, 'built', 'tomasz');
}

async function find({ bench, job }: Stage, point: string): Promise<void> {
  const finding = { finding: 'finding-1', severity: 'before-hand-over', text: 'It rubs.' } as const;
  const looking = { kind: 'look-at-point', point, verdict: 'wrong', finding } as const;
  const state = await does(bench('tomasz'), job, looking);
  await does(bench('tomasz'), job, {
    kind: 'close-finding',
    finding: 'finding-1',
    how: 'Set straight.',
  });
  const looked = pointById(state, point);
  if (looked === undefined) throw new Error(`the route has no point ${point}`);
  const again = { ...lookedAt(looked), verdict: 'adjusted', note: 'Set straight.' } as const;
  await does(bench('tomasz'), job, again);
}

/** Sent back once; then a finding is let go, and the bike is signed as checked. */
async function check(stage: Stage): Promise<void> {
  const { bench, job } = stage;
  stage.clock.pass(45);
  await does(bench('noor'), job, {
    kind: 'send-back',
    steps: ['saddle-rails'],
    points: ['front-tyre'],
    reason: 'Saddle points down.',
  });
  await build(bench('tomasz'), job);
  await walk(bench('tomasz'), job);
  await signedBy(stage, 'built', 'tomasz');
  const finding = { finding: 'finding-2', severity: 'stop-ride', text: 'Bell is quiet.' } as const;
  await does(bench('noor'), job, { kind: 'raise-finding', ...finding });
  const reason = 'The customer has a louder one.';
  await does(bench('petra'), job, { kind: 'allow-finding', finding: 'finding-2', reason });
  await signedBy(stage, 'checked', 'noor');
}

async function leave(stage: Stage, { customer }: Plot): Promise<void> {
  const { storage, signing, people, job, clock, bench } = stage;
  clock.pass(120);
  const state = (await loadJob(storage, job))?.state;
  if (state === undefined) throw new Error(`there is no job ${job}`);
  const handing = {
    customer: { name: customer },
    told: topicsToTell(state),
    firstCheck: '2027-01-06',
    strokes: '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0L9 9"/></svg>',
  };
  const person = personIn(people, 'petra');
  must(await handOver(signing, job, handing, { person, pin: person.demoPin ?? '' }));
  clock.pass(60);
  await does(bench('petra'), job, { kind: 'amend-record', text: 'The customer called: all well.' });
}

async function recordOf(stage: Stage, { customer }: Plot): Promise<GoldenRecord> {
  const { storage, people, shop, job, clock } = stage;
  const { entries: kept, plan } = await storage.log(job);
  if (plan === undefined) throw new Error(`${job} has no plan`);
  const entries = orderLog(kept);
  const names = Object.fromEntries([...people.values()].map(({ id, name }) => [id, name]));
  const publicKeys: Record<string, readonly unknown[]> = {};
  for (const id of people.keys()) {
    const { value } = (await storage.keys.get(`person:${id}`)) ?? {};
    publicKeys[id] = (value as { publicKeys: readonly unknown[] }).publicKeys; // createKeys wrote it
  }
  const on = clock.today();
  const told = { job, shop, customer, names, on, publicKeys, plan, entries };
  return { ...told, heads: headsOf(entries), sheet: sheetToday(told) };
}

async function signedBy(
  { clock, signing, people, job }: Stage,
  meaning: 'built' | 'checked',
  id: string,
): Promise<void> {
  clock.pass(2);
  const person = personIn(people, id);
  must(await sign(signing, job, meaning, { person, pin: person.demoPin ?? '' }));
}

/** 128 bits each, the same in every run. */
function countedIds(seed: string): () => string {
  let count = 0;
  return () => {
    count += 1;
    return digestOf({ seed, count }).slice(0, 32);
  };
}

function bikeOf(model: string): Bike {
  const { bikes } = demoBikesSchema.parse(readDemo('bikes.json'));
  const bike = bikes.find((candidate) => candidate.model === model);
  if (bike === undefined) throw new Error(`the demo has no ${model}`);
  return bike;
}

function personIn(people: ReadonlyMap<string, Person>, id: string): Person {
  const person = people.get(id);
  if (person === undefined) throw new Error(`nobody is ${id}`);
  return person;
}

function must<T>(done: { ok: true; value: T } | { ok: false; refusal: unknown }): T {
  if (!done.ok) throw new Error(`refused: ${JSON.stringify(done.refusal)}`);
  return done.value;
}
