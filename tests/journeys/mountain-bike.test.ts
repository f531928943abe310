/** A hardtail from its box to its rider: every gate refuses once on the way, and rework is shown good again. */

import { beforeAll, expect, test } from 'vitest';
import { gateCodes } from './gate-codes';
import { onRecord } from './hardtail-on-record';
import { onTheStand } from './hardtail-on-the-stand';
import { onTheWalk } from './hardtail-on-the-walk';
import { signedFor } from './hardtail-signed-for';
import type { Journey } from './journey';
import { openWorkshop } from './workshop';

const journey = { job: '' } as Journey; // the rest is there before the first chapter begins

beforeAll(async () => {
  const shop = await openWorkshop();
  const bike = shop.seeds.bikes.find(({ model }) => model === 'Hardtail 29');
  if (bike === undefined) throw new Error('the seeds have a hardtail');
  Object.assign(journey, { shop, bike });
});

onTheStand(journey);
onTheWalk(journey);
signedFor(journey);
onRecord(journey);

test('on the whole way every gate has refused', () => {
  expect([...journey.shop.refused].sort()).toEqual([...gateCodes].sort());
});
