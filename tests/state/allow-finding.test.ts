/** A finding is let go in a supervisor's name and by their own PIN, whoever is at the stand. */

import { beforeEach, expect, test } from 'vitest';
import {
  checkersPin,
  mechanicsPin,
  openShopWithAJob,
  type ShopWithAJob,
} from '../support/shop-with-a-job';
import { must, settled } from '../support/test-app';

const finding = 'f1';
const reason = 'Paint only, measured.';
let shop: ShopWithAJob;

beforeEach(async () => {
  shop = await openShopWithAJob();
  const store = await shop.app.openJobStore(shop.job);
  const raised = { finding, severity: 'stop-ride', text: 'Fork leg scored.' } as const;
  await store.act({ kind: 'raise-finding', ...raised });
  store.close();
  await settled();
});

test('a mechanic cannot, by any PIN, and a wrong PIN does not', async () => {
  const { app, job, mechanic, checker } = shop;
  const asked = { job, finding, reason };
  for (const [supervisor, supervisorPin, code] of [
    [mechanic.id, mechanicsPin, 'not-a-supervisor'],
    [checker.id, mechanicsPin, 'pin-wrong'],
    ['nobody', checkersPin, 'person-unknown'],
  ] as const)
    expect(await app.allowFinding({ ...asked, supervisor, supervisorPin })).toMatchObject({
      ok: false,
      refusal: { code },
    });
});

test('it stands in the supervisor’s name while the mechanic stays at the stand', async () => {
  const { app, job, mechanic, checker } = shop;
  app.session.getState().come(mechanic.id);
  const by = { supervisor: checker.id, supervisorPin: checkersPin };
  const state = must(await app.allowFinding({ job, finding, reason, ...by }));
  expect(state.findings[0]?.allowed).toMatchObject({ by: checker.id, reason });
  expect(app.session.getState().person).toBe(mechanic.id);
});
