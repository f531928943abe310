/** Plays one job from box to hand-over, with everything on the way that a log can hold. */

import { headsOf, orderLog } from '../../src/engine/integrity';
import { type Asked, pointById, topicsToTell, unconfirmedJoints } from '../../src/engine/job';
import { build, does, loadJob, lookedAt, walk } from '../../src/state';
import { handOver, sign } from '../../src/state/signing';
import { type GoldenName, type GoldenRecord, sheetToday } from './record';
import { must, personIn, type Stage, setStage } from './stage';

/** What happens to each bike besides being built: every kind of event is in one of the logs. */
const plots = {
  'mountain-bike': {
    model: 'Hardtail 29',
    again: 'tomasz',
    market: 'gb',
    customer: 'Ada Quill',
    missing: ['bell'],
    loosened: 'steerer-clamp',
    point: 'front-brake-disc',
  },
  'town-bike': {
    model: 'Town 7',
    again: 'tomasz',
    market: 'nl',
    customer: 'Zoë Łęcka',
    missing: ['reflectors'],
    loosened: 'rear-axle-nuts',
    point: 'dynamo-lights',
  },
  /** What was loosened is done again by the apprentice, and looked at by a second pair of eyes. */
  'apprentice-bike': {
    model: 'Hardtail 29',
    again: 'ines',
    market: 'de',
    customer: 'Mø Ångström',
    missing: ['bell'],
    loosened: 'steerer-clamp',
    point: 'front-brake-disc',
  },
} as const;

type Plot = (typeof plots)[GoldenName];

export async function playRecord(name: GoldenName): Promise<GoldenRecord> {
  const plot = plots[name];
  const stage = await setStage(name, plot);
  await work(stage, plot);
  await check(stage);
  await leave(stage, plot);
  return recordOf(stage, plot);
}

/** Built with a part that comes late, walked, put right, loosened and shown good again. */
async function work(stage: Stage, { missing, loosened, point, again }: Plot): Promise<void> {
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
  await build(stage.bench(again), stage.job);
  const state = await walk(bench, stage.job);
  for (const joint of unconfirmedJoints(state)) await act({ kind: 'confirm-joint', joint });
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
