/** The shop's own catalogue: who may change it, what a change does to jobs, and files between two shops. */

import { beforeEach, describe, expect, test } from 'vitest';
import type { JobState } from '../../src/engine/job';
import type { ShopChange } from '../../src/engine/plan';
import { loadBikesToTry } from '../../src/exchange/seeds';
import type { App } from '../../src/state';
import { bikeFrom, mountainBike } from '../support/bikes';
import { adding } from '../support/shop-versions';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';
import { unusedKeys as keys } from '../support/unused-keys';

/** The ordinary ones and a few of the unlike: every one of them is for the engine's own tests. */
const fewBikes = async () => (await loadBikesToTry()).slice(0, 16);

/** Who has just begun the shop. */
const byPetra = ({ session }: App) => ({
  supervisor: session.getState().person ?? '',
  supervisorPin: '508236',
});

async function openedShop(name: string): Promise<TestApp> {
  const shop = createTestApp({ keys, loadBikesToTry: fewBikes });
  must(await shop.app.startOwnShop({ shop: 'Quay Cycles', market: 'gb', name, pin: '508236' }));
  await settled();
  return shop;
}

const words = (how: string): ShopChange => ({
  kind: 'change-words',
  step: 'unpack',
  words: { how },
});
const reason = 'It was asked for at the stand.';
const change = (app: App, ...changes: ShopChange[]) => app.changeCatalogue({ reason, changes });

async function startedJob(app: App, frameNumber: string): Promise<JobState> {
  const job = must(await app.receiveBox({ bike: bikeFrom(mountainBike, { frameNumber }) }));
  await settled();
  return must(await app.startJob(job));
}

const stepIn = ({ plan }: JobState, id: string) => plan?.steps.find((step) => step.id === id);

let shop: TestApp;

beforeEach(async () => {
  shop = await openedShop('Petra');
});

describe('a change', () => {
  test('counts for jobs opened from now on, and an open job keeps its plan', async () => {
    const { app } = shop;
    const before = await startedJob(app, 'AA0001');
    must(
      await change(
        app,
        words('Lift it out, two of you.'),
        adding({ id: 'own-tag', after: ['unpack'] }),
      ),
    );
    await settled();
    const after = await startedJob(app, 'AA0002');
    expect(stepIn(after, 'unpack')?.how).toBe('Lift it out, two of you.');
    expect(stepIn(after, 'own-tag')?.title).toBe('Do own-tag');
    expect(after.plan?.catalogue).toMatch(/ \+ 1$/);

    const [open] = await app.findByFrameNumber('AA0001');
    expect((await shop.storage.log(open?.job ?? '')).plan).toEqual(before.plan);
    expect(stepIn(before, 'own-tag')).toBeUndefined();
  });

  test('has its author, its time and its reason, and is numbered on', async () => {
    const { app, clock } = shop;
    must(await change(app, words('One.')));
    must(await change(app, words('Two.')));
    await settled();
    expect(app.catalogueVersions.getState().rows).toMatchObject([
      { version: 1, by: 'Petra', reason, at: { claimed: clock.now().claimed } },
      { version: 2, by: 'Petra', reason },
    ]);
  });

  test('that would spoil a bike’s plan is refused with that bike, and nothing is kept', async () => {
    const { app } = shop;
    const tried: number[] = [];
    const refused = await app.changeCatalogue(
      { reason, changes: [{ kind: 'switch-off', step: 'bell' }] },
      (done) => tried.push(done),
    );
    expect(refused).toMatchObject({
      ok: false,
      refusal: { code: 'plan-unsound', bike: { extras: expect.arrayContaining(['bell']) } },
    });
    expect(tried[0]).toBe(0);
    expect(await shop.storage.catalogueVersions.all()).toEqual([]);
  });

  test('is made by a supervisor, with a reason', async () => {
    const { app } = shop;
    expect(await app.changeCatalogue({ reason: ' ', changes: [words('One.')] })).toMatchObject({
      refusal: { code: 'catalogue-reason-missing' },
    });
    const noor = must(
      await app.addPerson({ name: 'Noor', roles: ['mechanic'], pin: '274913' }, byPetra(app)),
    );
    await settled();
    app.session.getState().come(noor.id);
    expect(await change(app, words('One.'))).toMatchObject({
      refusal: { code: 'catalogue-for-supervisors' },
    });
    expect(await shop.storage.catalogueVersions.all()).toEqual([]);
  });

  test('that approves a figure puts it into new plans of that make and model', async () => {
    const { app } = shop;
    const named = { make: 'harrier works', model: 'Fell 2', joint: 'faceplate' };
    const figure = (max: number) =>
      ({ kind: 'approve-figure', ...named, figure: { min: 4, max } }) as ShopChange; // N·m
    must(await change(app, figure(5)));
    must(await change(app, figure(5.5)));
    await settled();
    expect((await startedJob(app, 'AA0001')).plan?.figures.faceplate).toEqual({
      min: 4,
      max: 5.5,
      source: { kind: 'approved', by: 'Petra', on: shop.clock.today() },
    });
  });

  test('travels in a backup of the shop', async () => {
    must(await change(shop.app, words('One.')));
    await shop.app.receiveBox({ bike: bikeFrom(mountainBike) });
    await settled();
    must(await shop.app.saveBackup('download'));
    const fresh = createTestApp({ keys });
    const looked = must(await fresh.app.lookAtFile(shop.saved.at(-1)?.content ?? new Blob()));
    must(await fresh.app.restoreBackup(looked));
    expect(await fresh.storage.catalogueVersions.all()).toEqual(
      await shop.storage.catalogueVersions.all(),
    );
  });
});

test('versions that fit the catalogue no longer keep new jobs from being opened, in words', async () => {
  const version = must(await change(shop.app, adding({ id: 'own-tag' })));
  await shop.storage.catalogueVersions.put({
    ...version,
    changes: [{ ...words('Gone.'), step: 'moon' } as ShopChange],
  });
  await settled();
  const job = must(await shop.app.receiveBox({ bike: bikeFrom(mountainBike) }));
  expect(await shop.app.startJob(job)).toEqual({
    ok: false,
    refusal: { code: 'shop-catalogue-faulty' },
  });
});

describe('a file', () => {
  let other: TestApp;
  let text: string;

  async function fileOf({ app, saved }: TestApp): Promise<string> {
    must(await app.saveCatalogueFile());
    return (await saved.at(-1)?.content.text()) ?? '';
  }

  beforeEach(async () => {
    other = await openedShop('Imre');
    must(await change(other.app, words('Theirs.'), adding({ id: 'own-tag' })));
    text = await fileOf(other);
  });

  test('brings what is lacking, whole', async () => {
    const read = must(await shop.app.readCatalogueFile(text));
    expect(read.incoming.map(({ by }) => by)).toEqual(['Imre']);
    expect(await shop.storage.catalogueVersions.all()).toEqual([]);
    const taking = { versions: read.versions, decided: {}, reason };
    expect(must(await shop.app.takeInCatalogue(taking))).toBe(1);
    expect(await shop.storage.catalogueVersions.all()).toEqual(
      await other.storage.catalogueVersions.all(),
    );
    expect(await shop.app.takeInCatalogue(taking)).toMatchObject({
      refusal: { code: 'catalogue-nothing-new' },
    });
  });

  test('that contradicts comes in once each contradiction is decided, and both sides end equal', async () => {
    must(await change(shop.app, words('Ours.')));
    const { versions, conflicts } = must(await shop.app.readCatalogueFile(text));
    expect(conflicts.map(({ subject }) => subject)).toEqual(['words unpack']);
    const undecided = { versions, decided: {}, reason };
    expect(await shop.app.takeInCatalogue(undecided)).toMatchObject({
      refusal: { code: 'catalogue-undecided', subjects: ['words unpack'] },
    });
    expect(await shop.storage.catalogueVersions.all()).toHaveLength(1);

    must(await shop.app.takeInCatalogue({ versions, decided: { 'words unpack': 'mine' }, reason }));
    const back = must(await other.app.readCatalogueFile(await fileOf(shop)));
    const theirs = Object.fromEntries(
      back.conflicts.map(({ subject }) => [subject, 'theirs' as const]),
    );
    must(await other.app.takeInCatalogue({ versions: back.versions, decided: theirs, reason }));
    await settled();
    for (const { app } of [shop, other])
      expect(stepIn(await startedJob(app, 'AA0009'), 'unpack')?.how).toBe('Ours.');
  });

  test('that would spoil a plan is refused whole', async () => {
    const sly = JSON.parse(text);
    sly.versions[0].changes.push({ kind: 'switch-off', step: 'bell' });
    const { versions } = must(await shop.app.readCatalogueFile(JSON.stringify(sly)));
    expect(await shop.app.takeInCatalogue({ versions, decided: {}, reason })).toMatchObject({
      refusal: { code: 'plan-unsound' },
    });
    expect(await shop.storage.catalogueVersions.all()).toEqual([]);
  });

  test('with a version that was altered since is refused', async () => {
    must(
      await shop.app.takeInCatalogue({
        ...must(await shop.app.readCatalogueFile(text)),
        decided: {},
        reason,
      }),
    );
    const altered = text.replace('Theirs.', 'Hers.');
    expect(await shop.app.readCatalogueFile(altered)).toMatchObject({
      refusal: { code: 'catalogue-version-altered', by: 'Imre' },
    });
  });
});
