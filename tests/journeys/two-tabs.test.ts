/** Two tabs of one tablet work on the same job: no tap is lost, and the record is one chain without holes. */

import { beforeAll, expect, test } from 'vitest';
import { verifyLog } from '../../src/engine/integrity';
import { isStepOpen, standingOfStep, stepsOf, unsettledPoints } from '../../src/engine/job';
import { type Perform, workThrough } from '../../src/state';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';
import { openWorkshop, performThrough, type Workshop } from './workshop';

let shop: Workshop;
let other: TestApp;

beforeAll(async () => {
  shop = await openWorkshop();
  other = createTestApp({ storage: shop.storage, clock: shop.clock });
  await settled();
});

async function openJob(index: number): Promise<string> {
  const bike = shop.seeds.bikes[index];
  if (bike === undefined) throw new Error(`the seeds have no bike ${index}`);
  const job = must(await shop.at('builder').receiveBox({ bike }));
  must(await shop.app.startJob(job));
  return job;
}

async function isOneChain(job: string): Promise<void> {
  const { entries } = await shop.storage.log(job);
  const row = await shop.storage.row(job);
  expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, index) => index + 1));
  expect(entries.map(({ lamport }) => lamport)).toEqual(entries.map((_, index) => index + 1));
  expect(verifyLog(entries, { job, heads: row?.heads ?? [] })).toEqual({
    ok: true,
    value: { heads: row?.heads, count: entries.length, forks: [] },
  });
}

test('given two tabs, when they tap in turn, then the whole job is built without a hole', async () => {
  const job = await openJob(0);
  const tabs = [performThrough(shop.app), performThrough(other.app)];
  const taps = [0, 0];
  let turn = 0;
  const inTurn: Perform = async (...asked) => {
    turn = 1 - turn;
    taps[turn] = (taps[turn] ?? 0) + 1;
    const tab = tabs[turn];
    if (tab === undefined) throw new Error('there are two tabs');
    return tab(...asked);
  };
  const state = await workThrough({ ...shop.bench('builder'), perform: inTurn }, job);
  expect(stepsOf(state).every(({ id }) => standingOfStep(state, id) === 'done')).toBe(true);
  expect(unsettledPoints(state)).toEqual([]);
  expect(Math.abs((taps[0] ?? 0) - (taps[1] ?? 0))).toBeLessThanOrEqual(1);
  expect(taps[0]).toBeGreaterThan(stepsOf(state).length / 2);
  await isOneChain(job);
});

test('given two tabs, when they tap at the same moment, then both taps are kept and both tabs show them', async () => {
  const job = await openJob(1);
  const here = await shop.app.openJobStore(job);
  const there = await other.app.openJobStore(job);
  const { builder } = shop.people;
  for (const { app } of [shop, other]) app.session.getState().come(builder.id);
  await settled();
  const { plan } = here.getState().state;
  const parts = (plan?.contents ?? []).map(({ id }) => ({ part: id, state: 'present' }) as const);
  const finding = (n: number) =>
    ({ kind: 'raise-finding', finding: `f-${n}`, severity: 'tell-customer', text: 'x' }) as const;

  expect(await here.act({ kind: 'check-contents', parts })).toBe(true);
  for (let n = 0; n < 10; n += 1) {
    const [one, two] = [here.act(finding(2 * n)), there.act(finding(2 * n + 1))];
    expect(await Promise.all([one, two])).toEqual([true, true]);
  }
  await settled();
  const { state } = here.getState();
  expect(state.findings).toHaveLength(20);
  expect(there.getState().state).toEqual(state);
  expect(there.getState().heads).toEqual(here.getState().heads);
  await isOneChain(job);
});

test('given two tabs, when both do the same step, then it is done once and the other is told', async () => {
  const job = await openJob(2);
  const { builder } = shop.people;
  const tabs = [performThrough(shop.app), performThrough(other.app)];
  const opened = (await shop.state(job)).plan?.steps ?? [];
  const state = await shop.state(job);
  const step = opened.find(({ id, joint, measures }) => {
    return joint === undefined && measures.length === 0 && isStepOpen(state, id);
  });
  if (step === undefined) throw new Error('a plan begins with something to do');
  const asked = { kind: 'do-step', step: step.id } as const;
  const answers = await Promise.all(tabs.map((tab) => tab(job, asked, builder)));
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  expect(answers.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: 'step-already-done' } });
  expect((await shop.state(job)).steps[step.id]?.done).toHaveLength(1);
  await isOneChain(job);
});
