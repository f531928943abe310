/** A tablet whose clock jumps back, or stands still, loses no work and changes no order. */

import { expect, test } from 'vitest';
import { orderLog } from '../../src/engine/integrity';
import { build, loadJob, walk } from '../../src/state';
import { mechanicsPin, openShopWithAJob } from '../support/shop-with-a-job';
import { must } from '../support/test-app';

/** Minutes. */
const year = 525_600;

test('work goes on, its log stays whole and in the order in which it was done, and it can be signed', async () => {
  const { app, bench, job, clock, storage } = await openShopWithAJob();
  await build(bench, job, { steps: 5 });
  clock.pass(-year / 4);
  await build(bench, job, { steps: 5 });
  clock.pass(year / 8);
  await build(bench, job);
  await walk(bench, job);
  must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));
  expect((await app.checkLog(job)).ok).toBe(true);
  const { entries = [] } = (await loadJob(storage, job)) ?? {};
  const claimed = entries.map(({ at }) => at.claimed);
  expect([...claimed].sort()).not.toEqual(claimed);
  const kept = orderLog([...entries].reverse()).map(({ id }) => id);
  expect(kept).toEqual(entries.map(({ id }) => id));
  expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, index) => index + 1));
}, 60_000);
