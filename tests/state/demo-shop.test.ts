/** The demo shop opens with true records: whole, signed by its people, in the states its script says. */

import { beforeAll, describe, expect, test } from 'vitest';
import { verifyLog } from '../../src/engine/integrity';
import { loadDemoSeeds } from '../../src/exchange/seeds';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

let shop: TestApp;
const progress: [number, number][] = [];

beforeAll(async () => {
  shop = createTestApp();
  must(await shop.app.openDemoShop((done, of) => progress.push([done, of])));
  await settled();
}, 30_000); // a whole demo, perhaps beside other tests

describe('the demo shop', () => {
  test('has every job in the state its script says', async () => {
    const { jobs } = await loadDemoSeeds();
    const { rows } = shop.app.rack.getState();
    const statusByFrame = Object.fromEntries(rows.map((row) => [row.frameNumber, row.status]));
    expect(statusByFrame).toEqual(Object.fromEntries(jobs.map((job) => [job.bike, job.state])));
  });

  test('tells how far it is', () => {
    const [last] = progress.slice(-1);
    expect(last?.[0]).toBe(last?.[1]);
    expect(progress.map(([done]) => done)).toEqual(progress.map((_, index) => index + 1));
  });

  test('has whole logs under the heads that the rack shows', async () => {
    for (const { job, heads, count } of shop.app.rack.getState().rows) {
      const { entries } = await shop.storage.log(job);
      expect(verifyLog(entries, { job, heads })).toMatchObject({ ok: true, value: { count } });
    }
  });

  test('has signatures that its people made over what they name', async () => {
    const handedOver = shop.app.rack.getState().rows.filter((row) => row.status === 'handed-over');
    expect(handedOver).toHaveLength(2);
    for (const { job } of handedOver) {
      const checked = await shop.app.checkSignatures(job);
      expect(checked.map(({ meaning, finding }) => [meaning, finding])).toEqual([
        ['built', 'good'],
        ['checked', 'good'],
        ['received', 'good'],
      ]);
    }
  });

  test('was worked in the past, and no clock went back', async () => {
    const now = shop.clock.now().claimed;
    for (const { job } of shop.app.rack.getState().rows) {
      const { entries } = await shop.storage.log(job);
      const times = entries.map(({ at }) => at.claimed);
      expect(times).toEqual([...times].sort());
      expect(times.every((time) => time < now)).toBe(true);
    }
  });

  test('says that it is a demo, and shows the PINs', () => {
    expect(shop.app.shop.getState()).toMatchObject({ demo: true, empty: false, market: 'gb' });
    expect(shop.app.people.getState().rows.every(({ demoPin }) => demoPin !== undefined)).toBe(
      true,
    );
  });

  test('has a tool board whose dates count from today', () => {
    const wrenches = shop.app.tools
      .getState()
      .rows.flatMap((tool) => (tool.kind === 'wrench' ? [tool.wrench] : []));
    const overdue = wrenches.filter(({ dueOn }) => dueOn < '2026-11-25');
    expect(overdue.length).toBeGreaterThan(0);
    expect(overdue.length).toBeLessThan(wrenches.length);
  });

  test('does not open over a shop that is there', async () => {
    const again = await shop.app.openDemoShop();
    expect(again).toMatchObject({ ok: false, refusal: { code: 'shop-not-empty' } });
  });
});
