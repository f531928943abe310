/** A small shop of one's own with a mechanic and a checker, a tool board, and one bike whose job has begun. */

import { demoToolsSchema } from '../../src/exchange/demo.schema';
import type { Bench, Person } from '../../src/state';
import { createPerform } from '../../src/state';
import type { AppPorts } from '../../src/state/ports';
import { bikeFrom, mountainBike } from './bikes';
import { readDemo } from './demo-files';
import { createTestApp, must, settled, type TestApp } from './test-app';

export const mechanicsPin = '274913';
export const checkersPin = '508236';

export interface ShopWithAJob extends TestApp {
  readonly job: string;
  readonly mechanic: Person;
  readonly checker: Person;
  /** Works as the mechanic does, straight through the storage. */
  readonly bench: Bench;
}

export async function openShopWithAJob(changes: Partial<AppPorts> = {}): Promise<ShopWithAJob> {
  const shop = createTestApp(changes);
  const { app, storage, clock } = shop;
  const checker = must(
    await app.startOwnShop({ shop: 'Test', market: 'gb', name: 'Petra', pin: checkersPin }),
  );
  const mechanic = must(
    await app.addPerson(
      { name: 'Noor', roles: ['mechanic'], pin: mechanicsPin },
      { supervisor: checker.id, supervisorPin: checkersPin },
    ),
  );
  await settled();
  app.session.getState().come(mechanic.id);
  const job = must(await app.receiveBox({ bike: bikeFrom(mountainBike, tyres) }));
  await settled();
  must(await app.startJob(job));
  await settled();
  const { wrenches } = demoToolsSchema.parse(readDemo('tools.json'));
  return {
    ...shop,
    job,
    mechanic,
    checker,
    bench: {
      storage,
      perform: createPerform({ storage, clock, device: 'tablet-a' }),
      person: mechanic,
      wrenches: wrenches.map(({ notes: _, ...wrench }) => ({
        ...wrench,
        calibratedOn: '2026-06-01',
        dueOn: wrench.dueInDays < 0 ? '2026-11-01' : '2027-06-01',
      })),
      today: clock.today,
    },
  };
}

const wheel = { tyrePressure: '30-50 psi', rimMaxKpa: 380, rotor: 'six-bolt', discMount: 'post' };
const tyres = { front: wheel, rear: wheel };
