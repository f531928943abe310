/** The shop: people and their PINs, deliveries in one piece, starting a job, and beginning anew. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isUsablePin } from '../../src/state';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { bikeFrom, mountainBike } from '../support/bikes';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

const own = { shop: 'Quay Cycles', market: 'gb', name: 'Petra', pin: '508236' };

async function openedShop(changes = {}): Promise<TestApp> {
  const shop = createTestApp(changes);
  must(await shop.app.startOwnShop(own));
  await settled();
  return shop;
}

test.each([
  ['274913', true],
  ['111111', false],
  ['123456', false],
  ['654321', false],
  ['135791', true],
  ['12345', false],
  ['12345a', false],
])('the PIN %s is usable: %s', (pin, expected) => {
  expect(isUsablePin(pin)).toBe(expected);
});

describe('a shop of one’s own', () => {
  test('begins empty, with one supervisor at the stand', async () => {
    const { app } = await openedShop();
    expect(app.shop.getState()).toMatchObject({ name: 'Quay Cycles', demo: false, empty: false });
    const [petra] = app.people.getState().rows;
    expect(petra).toMatchObject({ name: 'Petra', roles: ['mechanic', 'supervisor'], active: true });
    expect(app.session.getState().person).toBe(petra?.id);
    expect(app.rack.getState().rows).toEqual([]);
  });

  test('leaves nothing of the demo, but the device stays who it is', async () => {
    const shop = createTestApp();
    await shop.storage.keys.put({ id: 'device-id', value: 'tablet-a' });
    must(await shop.app.openDemoShop());
    must(await shop.app.startOwnShop(own));
    await settled();
    const { entries, customers, tools, blobs, people } = await shop.storage.holdings();
    expect([entries, customers, tools, blobs].flat()).toEqual([]);
    expect(people).toHaveLength(1);
    const keys = (await shop.storage.keys.all()).map(({ id }) => id).sort();
    expect(keys).toEqual(['device', 'device-id', `person:${people[0]?.id}`]);
  }, 30_000); // six stretched PINs and a whole demo, perhaps beside other tests

  test.each([
    ['no name', { ...own, name: ' ' }, 'name-missing'],
    ['a PIN of one digit', { ...own, pin: '000000' }, 'pin-not-usable'],
  ])('does not begin, and erases nothing, with %s', async (_, wrong, code) => {
    const { app } = await openedShop();
    must(await app.receiveBox({ bike: bikeFrom(mountainBike) }));
    expect(await app.startOwnShop(wrong)).toMatchObject({ ok: false, refusal: { code } });
    await settled();
    expect(app.rack.getState().rows).toHaveLength(1);
  });
});

describe('people', () => {
  test('come with a PIN, take a new one, and retire without leaving the records', async () => {
    const { app } = await openedShop();
    const [petra] = app.people.getState().rows;
    const by = { supervisor: petra?.id ?? '', supervisorPin: own.pin };
    const person = { name: 'Noor', roles: ['mechanic'], pin: '274913' } as const;
    expect(await app.addPerson(person, { ...by, supervisorPin: '111222' })).toMatchObject({
      ok: false,
      refusal: { code: 'pin-wrong' },
    });
    const noor = must(await app.addPerson(person, by));
    const asMechanic = { supervisor: noor.id, supervisorPin: person.pin };
    for (const refused of [
      await app.addPerson({ ...person, roles: ['supervisor'] }, asMechanic),
      await app.retirePerson(by.supervisor, asMechanic),
    ])
      expect(refused).toEqual({ ok: false, refusal: { code: 'not-a-supervisor' } });
    expect(await app.retirePerson(by.supervisor, by)).toEqual({
      ok: false,
      refusal: { code: 'last-supervisor' },
    });
    expect(await app.choosePin(noor.id, '917582')).toMatchObject({
      ok: false,
      refusal: { code: 'pin-held-already' },
    });
    must(await app.retirePerson(noor.id, by));
    await settled();
    expect(app.people.getState().rows).toMatchObject([
      { name: 'Noor', active: false },
      { name: 'Petra', active: true },
    ]);
    app.session.getState().come(noor.id);
    const asked = await app.receiveBox({ bike: bikeFrom(mountainBike) });
    expect(asked).toMatchObject({ ok: false, refusal: { code: 'nobody-at-the-stand' } });
  });
});

describe('a delivery', () => {
  const text = readFileSync(
    new URL('../../public/demo/delivery-list.csv', import.meta.url),
    'utf8',
  );

  test('is kept in one transaction, and known the next time', async () => {
    const { app } = await openedShop();
    const { rows } = must(await app.readDeliveryList(text));
    await settled();
    expect(app.rack.getState().rows).toEqual([]);
    expect(must(await app.keepDeliveries(rows))).toBe(12);
    await settled();
    expect(app.rack.getState().rows.map(({ status }) => status)).toEqual(Array(12).fill('boxed'));
    const again = must(await app.readDeliveryList(text));
    expect(again.rows).toEqual([]);
    expect(new Set(again.refused.map(({ code }) => code))).toEqual(new Set(['frame-number-known']));
  });

  test('that does not fit on the disk leaves nothing behind', async () => {
    const storage = createMemoryStorage();
    const { app } = await openedShop({
      storage: {
        ...storage,
        addJobs: async () => ({ ok: false, refusal: { code: 'storage-full' } }),
      },
    });
    const { rows } = must(await app.readDeliveryList(text));
    expect(await app.keepDeliveries(rows)).toMatchObject({ refusal: { code: 'storage-full' } });
  });
});

describe('a job', () => {
  test('freezes the plan for its bike, with the figures the shop knew that day', async () => {
    const { app, storage } = await openedShop();
    const bike = bikeFrom(mountainBike, { front: { tyrePressure: '30-50 psi' } });
    const source = { kind: 'document', reference: 'p. 8' } as const;
    const figure = { min: 5, max: 6, source } as never; // as it comes from the figure page
    must(await app.saveFigure({ make: bike.make, model: bike.model, joint: 'faceplate', figure }));
    await settled();
    const job = must(await app.receiveBox({ bike }));
    const state = must(await app.startJob(job));
    expect(state.plan?.figures).toEqual({ faceplate: figure });
    expect(state.plan?.frontBrakeLever).toBe('right');
    expect((await storage.log(job)).plan).toEqual(state.plan);
  });

  test('that is not there cannot start', async () => {
    const { app } = await openedShop();
    expect(await app.startJob('no-such-job')).toMatchObject({ refusal: { code: 'job-missing' } });
  });

  test('asks the browser to keep what the shop has, once', async () => {
    let asked = 0;
    const { app } = await openedShop({
      askToKeep: async () => {
        asked += 1;
        return { answer: 'kept' };
      },
    });
    must(await app.receiveBox({ bike: bikeFrom(mountainBike) }));
    await settled();
    must(await app.receiveBox({ bike: bikeFrom(mountainBike, { frameNumber: 'HW24-00418' }) }));
    expect(asked).toBe(1);
    expect(app.durability.getState().answer).toBe('kept');
  });
});
