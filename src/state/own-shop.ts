/** A shop of one's own: everything before it is erased, and one supervisor begins. */

import { ok, type Result, refuse } from '../engine/base';
import type { Person, Storage, StorageRefusal } from '../storage/contract';
import { isUsablePin, type NameMissing, type PinNotUsable } from './people';
import type { Keys, KeysUnavailable } from './ports';
import { attempted } from './storage-refusals';

export interface OwnShop {
  readonly shop: string;
  readonly market: string;
  readonly name: string;
  readonly pin: string;
}

export type OwnShopRefusal = StorageRefusal | KeysUnavailable | NameMissing | PinNotUsable;

/** The device stays who it is: its id and its own keys are not the shop's. */
const devicesOwn = ['device-id', 'device'];

export async function startOwnShop(
  {
    storage,
    keys,
    newId,
  }: {
    readonly storage: Storage;
    readonly keys: Keys;
    readonly newId: () => string;
  },
  { shop, market, name, pin }: OwnShop,
): Promise<Result<Person, OwnShopRefusal>> {
  const person: Person = {
    id: newId(),
    name: name.trim(),
    roles: ['mechanic', 'supervisor'],
    active: true,
  };
  if (person.name === '' || shop.trim() === '') return refuse({ code: 'name-missing' });
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const erased = await attempted(() => emptyBook(storage));
  if (!erased.ok) return erased;
  const made = await keys.createFor(person.id, pin);
  if (!made.ok) return made;
  const begun = await attempted(async () => {
    await storage.people.put(person);
    await storage.settings.put({ id: 'shop', value: { name: shop.trim(), market, demo: false } });
  });
  return begun.ok ? ok(person) : begun;
}

/** Erases all but what makes this device the one it is. */
export async function emptyBook(storage: Storage): Promise<void> {
  const kept = await Promise.all(devicesOwn.map((id) => storage.keys.get(id)));
  await storage.eraseEverything();
  await storage.keys.putAll(kept.filter((row) => row !== undefined));
}
