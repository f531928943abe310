/** How far each job of the demo shop has come: played by its people, hour by hour. */

import { assert, type Refusal, type Result } from '../engine/base';
import { pointById, topicsToTell } from '../engine/job';
import type { Wrench } from '../engine/torque';
import type { KnownFigure, Person, Storage } from '../storage/contract';
import { daysAfter } from './calendar-days';
import type { DemoClock } from './demo-clock';
import type { DemoDue, DemoFinding, DemoJob, DemoSeeds } from './demo-seeds';
import { drawnName } from './drawn-name';
import { type Bench, build, does, lookedAt, walk, workThrough } from './good-mechanic';
import { loadJob } from './load-job';
import type { Perform } from './perform';
import type { Keys, ShopCatalogue } from './ports';
import { receiveBox } from './receive-boxes';
import { handOver, type SigningPorts, sign } from './signing';
import { startJob } from './start-job';

export interface DemoFloor {
  readonly seeds: DemoSeeds;
  readonly storage: Storage;
  readonly createClock: () => DemoClock;
  readonly performBy: (clock: DemoClock) => Perform;
  readonly keys: Keys;
  readonly newId: () => string;
  /** As they were on that day. */
  readonly wrenchesOn: (day: string) => readonly Wrench[];
  readonly figures: readonly KnownFigure[];
  readonly loadCatalogue: () => Promise<ShopCatalogue>;
  readonly today: string;
  readonly personOf: (id: string) => Person;
  readonly pinOf: (id: string) => string;
}

type DemoJobIn<S extends DemoJob['state']> = Extract<DemoJob, { readonly state: S }>;

/** One job with its own clock: people work on several bikes a day. */
interface Played {
  readonly floor: DemoFloor;
  readonly clock: DemoClock;
  readonly perform: Perform;
  readonly job: string;
}

export async function playJob(floor: DemoFloor, demo: DemoJob): Promise<void> {
  const played = await receive(floor, demo);
  switch (demo.state) {
    case 'boxed':
      return;
    case 'on-the-stand':
      await start(played, demo.builder, 1, '14:05');
      await build(benchOf(played, demo.builder), played.job, { steps: demo.stepsDone });
      return;
    case 'on-hold':
      return playHold(played, demo);
    case 'to-be-checked':
      await start(played, demo.builder, 1, '09:10');
      await workThrough(benchOf(played, demo.builder), played.job);
      return signedBy(played, 'built', demo.builder);
    case 'handed-over':
      return playWhole(played, demo);
  }
}

async function receive(floor: DemoFloor, demo: DemoJob): Promise<Played> {
  const clock = floor.createClock();
  const perform = floor.performBy(clock);
  clock.goTo(demo.receivedDaysAgo, '08:40');
  const bike = floor.seeds.bikes.find(({ frameNumber }) => frameNumber === demo.bike);
  assert(bike !== undefined, `the demo has no bike ${demo.bike}`);
  const due = 'due' in demo ? demo.due : undefined;
  const box = {
    bike,
    ...(due && { due: dueText(floor.today, due) }),
    ...(demo.cartonDamage !== undefined && { cartonDamage: demo.cartonDamage }),
  };
  const by = floor.personOf(demo.receivedBy);
  const job = allowed(await receiveBox({ newId: floor.newId, perform }, box, by), 'receive-box');
  return { floor, clock, perform, job };
}

async function start(
  played: Played,
  builder: string,
  daysAgo: number,
  time: string,
): Promise<void> {
  const { floor, clock, perform, job } = played;
  clock.goTo(daysAgo, time);
  const ports = {
    storage: floor.storage,
    perform,
    loadCatalogue: floor.loadCatalogue,
    figures: () => floor.figures,
    market: () => floor.seeds.shop.market,
  };
  allowed(await startJob(ports, job, floor.personOf(builder)), 'open-job');
}

async function playHold(played: Played, demo: DemoJobIn<'on-hold'>): Promise<void> {
  await start(played, demo.builder, 2, '10:20');
  const bench = benchOf(played, demo.builder);
  await build(bench, played.job, { steps: demo.stepsDone, missing: demo.missing });
  await does(bench, played.job, { kind: 'hold-job', for: demo.for, note: demo.note });
}

async function playWhole(played: Played, demo: DemoJobIn<'handed-over'>): Promise<void> {
  const { floor, clock, job } = played;
  await start(played, demo.builder, demo.daysAgo, '09:05');
  const bench = benchOf(played, demo.builder);
  await build(bench, job);
  for (const finding of demo.findings) await find(played, bench, finding);
  await walk(bench, job);
  await signedBy(played, 'built', demo.builder);

  clock.goTo(demo.daysAgo, '14:30');
  await signedBy(played, 'checked', demo.checker);

  clock.goTo(demo.daysAgo, '16:40');
  const state = (await loadJob(floor.storage, job))?.state;
  assert(state !== undefined, `there is no job ${job}`);
  const { name, contact } = demo.customer;
  const handingOver = {
    customer: { name, ...(contact !== undefined && { contact }) },
    told: topicsToTell(state),
    firstCheck: daysAfter(clock.today(), 42),
    strokes: drawnName(name),
  };
  const by = { person: floor.personOf(demo.checker), pin: floor.pinOf(demo.checker) };
  allowed(await handOver(signingPorts(played), job, handingOver, by), 'hand-over');
}

/** Found on the walk, put right where the script says how, and looked at again. */
async function find(
  { floor, job }: Played,
  bench: Bench,
  { point, severity, text, closedHow }: DemoFinding,
): Promise<void> {
  const finding = floor.newId();
  bench.spend?.(3);
  const found = { finding, severity, text };
  const state = await does(bench, job, {
    kind: 'look-at-point',
    point,
    verdict: 'wrong',
    finding: found,
  });
  if (closedHow === undefined) return;
  bench.spend?.(5);
  await does(bench, job, { kind: 'close-finding', finding, how: closedHow });
  const looked = pointById(state, point);
  assert(looked !== undefined, `the route has no point ${point}`);
  await does(bench, job, { ...lookedAt(looked), verdict: 'adjusted', note: closedHow });
}

function benchOf({ floor, clock, perform, job: _ }: Played, builder: string): Bench {
  return {
    storage: floor.storage,
    perform,
    person: floor.personOf(builder),
    wrenches: floor.wrenchesOn(clock.today()),
    printedOn: (joint, { make, model }) =>
      floor.seeds.markings.find(
        (marking) => marking.joint === joint && marking.make === make && marking.model === model,
      )?.printed,
    today: clock.today,
    spend: clock.spend,
  };
}

async function signedBy(
  played: Played,
  meaning: 'built' | 'checked',
  person: string,
): Promise<void> {
  const { floor, clock, job } = played;
  clock.spend(2);
  const signer = { person: floor.personOf(person), pin: floor.pinOf(person) };
  allowed(await sign(signingPorts(played), job, meaning, signer), meaning);
}

function signingPorts({ floor, clock, perform }: Played): SigningPorts {
  const { storage, keys, newId } = floor;
  return { storage, perform, clock, keys, newId };
}

function dueText(today: string, { inDays, time }: DemoDue): string {
  return `${daysAfter(today, inDays)}T${time}`;
}

/** The demo's script is ours: a refusal is a fault in it. */
function allowed<T>(result: Result<T, Refusal>, what: string): T {
  assert(result.ok, `${what} was refused: ${result.ok ? '' : JSON.stringify(result.refusal)}`);
  return result.value;
}
