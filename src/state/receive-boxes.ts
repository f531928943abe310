/** Boxes that come in: one by hand, or a whole delivery in one transaction. */

import { assert, ok, type Result } from '../engine/base';
import type { AskedOf } from '../engine/job';
import type { JobWrite, Storage, StorageRefusal } from '../storage/contract';
import { type Actor, decided, type Perform, type PerformRefusal } from './perform';
import type { Clock, DeliveredBike } from './ports';

export type Box = Omit<AskedOf<'receive-box'>, 'kind'>;

export interface ReceivePorts {
  readonly storage: Storage;
  readonly clock: Clock;
  readonly device: string;
  readonly newId: () => string;
  readonly perform: Perform;
}

/** Answers the new job's id. */
export async function receiveBox(
  { newId, perform }: Pick<ReceivePorts, 'newId' | 'perform'>,
  box: Box,
  person: Actor,
): Promise<Result<string, PerformRefusal>> {
  const job = newId();
  const received = await perform(job, { kind: 'receive-box', ...box }, person);
  return received.ok ? ok(job) : received;
}

/** All good rows of a delivery, or none; answers how many. */
export function receiveDelivery(
  { storage, clock, device, newId }: Omit<ReceivePorts, 'perform'>,
  rows: readonly DeliveredBike[],
  person: Actor,
): Promise<Result<number, StorageRefusal>> {
  const stamp = { by: person.id, roles: person.roles, at: clock.now(), on: clock.today() };
  const writes = rows.map(({ line: _, ...box }): JobWrite => {
    const change = decided(newId(), device, { log: { entries: [] } }, undefined, (heads) => ({
      kind: 'receive-box',
      ...box,
      stamp: { ...stamp, heads },
    }));
    assert(change.ok, 'a new job can receive its box');
    const { entries, row } = change.value;
    return { entries, row };
  });
  return storage.addJobs(writes);
}
