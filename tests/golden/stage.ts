/** The stage on which a golden job is played: storage in memory, real keys, counted ids, a clock that is told the time. */

import type { Bike } from '../../src/engine/bike';
import { digestOf } from '../../src/engine/integrity';
import {
  demoBikesSchema,
  demoFiguresSchema,
  demoPeopleSchema,
  demoToolsSchema,
} from '../../src/exchange/demo.schema';
import { createKeys } from '../../src/platform/keys';
import { type Bench, createPerform, figureKey, type Perform } from '../../src/state';
import { receiveBox } from '../../src/state/receive-boxes';
import type { SigningPorts } from '../../src/state/signing';
import { startJob } from '../../src/state/start-job';
import type { Person, Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { readDemo, wrenchesOn } from '../support/demo-files';
import { createFixedClock, type FixedClock } from '../support/fixed-clock';
import { marketSeeds } from '../support/market-seeds';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

export interface Stage {
  readonly storage: Storage;
  readonly clock: FixedClock;
  readonly perform: Perform;
  readonly signing: SigningPorts;
  readonly people: ReadonlyMap<string, Person>;
  readonly shop: string;
  readonly bench: (person: string) => Bench;
  readonly job: string;
}

/** The box is in, its bike described, its job open. */
export async function setStage(
  name: string,
  plot: { readonly model: string; readonly market: string },
): Promise<Stage> {
  const storage = createMemoryStorage();
  const clock = createFixedClock('2026-11-25T09:00:00');
  const newId = countedIds(name);
  const keys = createKeys(storage.keys);
  const perform = createPerform({ storage, clock, device: 'golden-tablet' });
  const { shop, people: staff } = demoPeopleSchema.parse(readDemo('people.json'));
  const people = new Map<string, Person>();
  for (const { id, name: called, roles, pin } of staff) {
    must(await keys.createFor(id, pin));
    people.set(id, { id, name: called, roles, active: true, demoPin: pin });
  }
  const wrenches = wrenchesOn(
    clock.today(),
    demoToolsSchema.parse(readDemo('tools.json')).wrenches,
  );
  const { figures, markings } = demoFiguresSchema.parse(readDemo('figures.json'));
  const bench = (person: string): Bench => ({
    storage,
    perform,
    person: personIn(people, person),
    wrenches,
    printedOn: (joint, { make, model }) =>
      markings.find((row) => row.joint === joint && row.make === make && row.model === model)
        ?.printed,
    today: clock.today,
    spend: clock.pass,
  });

  const tomasz = personIn(people, 'tomasz');
  const box = {
    bike: bikeOf(plot.model),
    due: '2026-11-28T11:00',
    cartonDamage: 'One corner wet.',
  };
  const job = must(await receiveBox({ newId, perform }, box, tomasz));
  const bike = { ...box.bike, colour: 'Ink blue' };
  must(await perform(job, { kind: 'describe-bike', bike }, tomasz));
  const ports = {
    storage,
    perform,
    loadCatalogue: async () => ({
      catalogue: { ...seedCatalogue(), version: 'golden' },
      points: seedPoints(),
      markets: marketSeeds,
    }),
    figures: () =>
      figures.map((row) => ({ ...row, id: figureKey(row.make, row.model, row.joint) })),
    market: () => plot.market,
  };
  clock.pass(30);
  must(await startJob(ports, job, tomasz));
  const signing = { storage, perform, clock, keys, newId };
  return { storage, clock, perform, signing, people, shop: shop.name, bench, job };
}

/** 128 bits each, the same in every run. */
function countedIds(seed: string): () => string {
  let count = 0;
  return () => {
    count += 1;
    return digestOf({ seed, count }).slice(0, 32);
  };
}

function bikeOf(model: string): Bike {
  const { bikes } = demoBikesSchema.parse(readDemo('bikes.json'));
  const bike = bikes.find((candidate) => candidate.model === model);
  if (bike === undefined) throw new Error(`the demo has no ${model}`);
  return bike;
}

export function personIn(people: ReadonlyMap<string, Person>, id: string): Person {
  const person = people.get(id);
  if (person === undefined) throw new Error(`nobody is ${id}`);
  return person;
}

export function must<T>(done: { ok: true; value: T } | { ok: false; refusal: unknown }): T {
  if (!done.ok) throw new Error(`refused: ${JSON.stringify(done.refusal)}`);
  return done.value;
}
