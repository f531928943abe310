/** A shop of its own for one journey: its people come to the stand in turn, and every refusal is kept. */

import { refuse } from '../../src/engine/base';
import type { Bike } from '../../src/engine/bike';
import type { Asked, Gate, JobState } from '../../src/engine/job';
import { type Sheet, sheetOf } from '../../src/engine/sheet';
import { loadDemoSeeds } from '../../src/exchange/seeds';
import {
  type Bench,
  type HandingOver,
  type JobStore,
  loadJob,
  type Perform,
  type Person,
} from '../../src/state';
import { wrenchesOn } from '../support/demo-files';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

/** Invented people; none of them is one of the demo's. */
const staff = {
  supervisor: { name: 'Marit Sandell', roles: ['mechanic', 'supervisor'], pin: '402917' },
  builder: { name: 'Owen Tarrant', roles: ['mechanic'], pin: '758203' },
  checker: { name: 'Lena Holt', roles: ['mechanic'], pin: '619384' },
  learner: { name: 'Ruben Ashdown', roles: ['apprentice'], pin: '350871' },
} as const;

export type Post = keyof typeof staff;

type Answer<T> = { ok: true; value: T } | { ok: false; refusal: { readonly code: string } };

export interface Workshop extends TestApp {
  readonly seeds: Awaited<ReturnType<typeof loadDemoSeeds>>;
  readonly people: Readonly<Record<Post, Person>>;
  /** The code of every refusal that was expected, as it came. */
  readonly refused: Set<string>;
  /** What an action of the app must have refused; answers why. */
  refuses<K extends Gate['code']>(done: Answer<unknown>, code: K): Extract<Gate, { code: K }>;
  /** Somebody comes to the stand. */
  at(post: Post): TestApp['app'];
  bench(post: Post): Bench;
  /** What must be allowed. */
  does(post: Post, job: string, asked: Asked): Promise<JobState>;
  /** What must be refused; answers why. */
  tries<K extends Gate['code']>(
    post: Post,
    job: string,
    asked: Asked,
    code: K,
  ): Promise<Extract<Gate, { code: K }>>;
  state(job: string): Promise<JobState>;
  sign(post: Post, job: string, meaning: 'built' | 'checked'): Promise<Answer<JobState>>;
  handOver(post: Post, job: string, handing: HandingOver): Promise<Answer<JobState>>;
  sheet(job: string, customer?: string): Promise<Sheet>;
}

export async function openWorkshop(market = 'gb'): Promise<Workshop> {
  const test = createTestApp();
  const people = await engage(test.app, market);
  const seeds = await loadDemoSeeds();
  await furnish(test, seeds);
  return { ...test, people, seeds, ...actions(test, seeds, people) };
}

async function engage(app: TestApp['app'], market: string): Promise<Workshop['people']> {
  const { supervisor, builder, checker, learner } = staff;
  const own = { shop: 'Two Bridges Cycles', market, ...supervisor };
  const first = must(await app.startOwnShop(own));
  const by = { supervisor: first.id, supervisorPin: supervisor.pin };
  return {
    supervisor: first,
    builder: must(await app.addPerson(builder, by)),
    checker: must(await app.addPerson(checker, by)),
    learner: must(await app.addPerson(learner, by)),
  };
}

async function furnish({ app, clock }: TestApp, seeds: Workshop['seeds']): Promise<void> {
  for (const wrench of wrenchesOn(clock.today(), seeds.wrenches)) {
    must(await app.addTool({ kind: 'wrench', wrench }));
  }
  for (const figure of seeds.figures) must(await app.saveFigure(figure));
  await settled();
}

function actions(
  { app, storage, clock }: TestApp,
  seeds: Workshop['seeds'],
  people: Workshop['people'],
): Omit<Workshop, keyof TestApp | 'people' | 'seeds'> {
  const at = (post: Post) => {
    app.session.getState().come(people[post].id);
    return app;
  };
  const perform = performThrough(app);
  const refused = new Set<string>();
  const refuses: Workshop['refuses'] = (done, code) => {
    const refusal = refusedWith(done, code);
    refused.add(code);
    return refusal;
  };
  const bench = (post: Post): Bench => ({
    storage,
    perform,
    person: people[post],
    wrenches: app.tools
      .getState()
      .rows.flatMap((tool) => (tool.kind === 'wrench' ? [tool.wrench] : [])),
    printedOn: (joint, { make, model }) => markingOn(seeds, joint, { make, model }),
    today: clock.today,
    spend: clock.pass,
  });
  const state = async (job: string) => {
    const loaded = await loadJob(storage, job);
    if (loaded === undefined) throw new Error(`there is no job ${job}`);
    return loaded.state;
  };
  return {
    at,
    bench,
    state,
    does: async (post, job, asked) => must(await perform(job, asked, people[post])).state,
    refused,
    refuses,
    tries: async (post, job, asked, code) => refuses(await perform(job, asked, people[post]), code),
    sign: (post, job, meaning) => at(post).sign({ job, meaning, pin: staff[post].pin }),
    handOver: (post, job, handing) => at(post).handOver({ job, pin: staff[post].pin, ...handing }),
    async sheet(job, customer) {
      const { entries, heads, state } = (await loadJob(storage, job)) ?? {};
      if (state === undefined || heads === undefined) throw new Error(`there is no job ${job}`);
      const nameOf = (id: string) =>
        Object.values(people).find((person) => person.id === id)?.name ?? id;
      const shop = app.shop.getState().name;
      const count = entries?.length ?? 0;
      const on = clock.today();
      const sheet = sheetOf({ job, state, heads, entries: count, shop, nameOf, customer, on });
      if (sheet === undefined) throw new Error('a job that is open has a sheet');
      return sheet;
    },
  };
}

/** Every tap goes the way a screen's does: by whoever is at the stand, through the job's own store. */
export function performThrough(app: TestApp['app']): Perform {
  const stores = new Map<string, JobStore>();
  return async (job, asked, person, extras) => {
    app.session.getState().come(person.id);
    const store = stores.get(job) ?? (await app.openJobStore(job));
    stores.set(job, store);
    const isDone = await store.act(asked, extras);
    const { state, problem } = store.getState();
    if (isDone) return { ok: true, value: { state, events: [], entries: [] } };
    if (problem === undefined) throw new Error('one tap came before the other was on the disk');
    if (problem.refusal.code === 'nobody-at-the-stand') throw new Error('nobody is at the stand');
    store.dismiss();
    return refuse(problem.refusal);
  };
}

/** The refusal that was expected; anything else fails the test. */
function refusedWith<K extends Gate['code']>(
  done: Answer<unknown>,
  code: K,
): Extract<Gate, { code: K }> {
  if (done.ok) throw new Error(`${code} was expected, but it was allowed`);
  if (done.refusal.code !== code)
    throw new Error(`${code} was expected, not ${JSON.stringify(done.refusal)}`);
  return done.refusal as Extract<Gate, { code: K }>; // its code was just compared
}

function markingOn(
  { markings }: Workshop['seeds'],
  joint: string,
  { make, model }: Pick<Bike, 'make' | 'model'>,
): string | undefined {
  return markings.find((row) => row.joint === joint && row.make === make && row.model === model)
    ?.printed;
}
