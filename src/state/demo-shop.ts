/** The demo shop: invented people do invented work through the real commands, on past working days. */

import { assert, ok, type Result, refuse } from '../engine/base';
import type { Person, Storage, StorageRefusal } from '../storage/contract';
import { createDemoClock } from './demo-clock';
import { type DemoFloor, playJob } from './demo-jobs';
import type { DemoSeeds } from './demo-seeds';
import { demoTools, wrenchesOn } from './demo-tools';
import { figureKey } from './figure-book';
import { createPerform } from './perform';
import type { Clock, Keys, KeysUnavailable, ShopCatalogue } from './ports';
import { attempted } from './storage-refusals';

export interface DemoPorts {
  readonly storage: Storage;
  /** The demo is played out of sight and kept in one piece: all of it or nothing. */
  readonly createScratchStorage: () => Storage;
  readonly clock: Clock;
  readonly keys: Keys;
  readonly newId: () => string;
  readonly device: string;
  readonly loadCatalogue: () => Promise<ShopCatalogue>;
  readonly loadDemoSeeds: () => Promise<DemoSeeds>;
}

export type DemoRefusal =
  | StorageRefusal
  | KeysUnavailable
  | { readonly code: 'shop-not-empty'; readonly jobs: number };

/** Fills an empty storage. `onProgress` is told how many of the demo's people and jobs are ready. */
export async function openDemoShop(
  ports: DemoPorts,
  onProgress: (done: number, of: number) => void = () => undefined,
): Promise<Result<true, DemoRefusal>> {
  // Looked at before any key is made: people of a shop that is there keep theirs.
  const already = await attempted(() => ports.storage.people.all());
  if (!already.ok) return already;
  if (already.value.length > 0) return refuse({ code: 'shop-not-empty', jobs: 0 });
  const seeds = await ports.loadDemoSeeds();
  const of = seeds.people.length + seeds.jobs.length;
  let done = 0;
  const advance = () => {
    done += 1;
    onProgress(done, of);
  };

  const people = new Map<string, Person>();
  for (const { id, name, roles, pin } of seeds.people) {
    const made = await ports.keys.createFor(id, pin);
    if (!made.ok) return made;
    people.set(id, { id, name, roles, active: true, demoPin: pin });
    advance();
  }
  const scratch = await furnish(ports, seeds, [...people.values()]);
  const floor = await openFloor(ports, seeds, people, scratch);
  for (const job of seeds.jobs) {
    await playJob(floor, job);
    advance();
  }
  const kept = await ports.storage.takeIn(await scratch.holdings());
  return kept.ok ? ok(true) : kept;
}

async function furnish(
  { createScratchStorage, clock }: DemoPorts,
  seeds: DemoSeeds,
  people: readonly Person[],
): Promise<Storage> {
  const scratch = createScratchStorage();
  await scratch.people.putAll(people);
  await scratch.tools.putAll(demoTools(seeds, clock));
  await scratch.figures.putAll(
    seeds.figures.map((row) => ({ ...row, id: figureKey(row.make, row.model, row.joint) })),
  );
  await scratch.settings.put({ id: 'shop', value: { ...seeds.shop, demo: true } });
  return scratch;
}

async function openFloor(
  { clock: real, keys, newId, device, loadCatalogue }: DemoPorts,
  seeds: DemoSeeds,
  people: ReadonlyMap<string, Person>,
  storage: Storage,
): Promise<DemoFloor> {
  const tools = await storage.tools.all();
  const figures = await storage.figures.all();
  const catalogue = await loadCatalogue();
  return {
    seeds,
    storage,
    createClock: () => createDemoClock(real),
    performBy: (clock) => createPerform({ storage, clock, device }),
    keys,
    newId,
    wrenchesOn: (day) => wrenchesOn(tools, day),
    figures,
    loadCatalogue: async () => catalogue,
    today: real.today(),
    personOf(id) {
      const person = people.get(id);
      assert(person !== undefined, `nobody in the demo shop is ${id}`);
      return person;
    },
    pinOf: (id) => people.get(id)?.demoPin ?? '',
  };
}
