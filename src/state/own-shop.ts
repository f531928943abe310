/** A shop of one's own: everything before it is erased, and one supervisor begins. */

import { ok, type Result, refuse } from '../engine/base';
import type { LeftBehind, Person, Storage, StorageRefusal } from '../storage/contract';
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
  // Made first: where the browser keeps no keys, nothing has been erased yet.
  const made = await keys.createFor(person.id, pin);
  if (!made.ok) return made;
  const begun = await attempted(() =>
    emptyBook(storage, {
      settings: [{ id: 'shop', value: { name: shop.trim(), market, demo: false } }],
      people: [person],
    }),
  );
  return begun.ok ? ok(person) : begun;
}

/** Erases all but what makes this device the one it is, and the keys of those who stay; a shop is always left behind. */
export async function emptyBook(
  storage: Storage,
  { settings, people = [] }: Pick<LeftBehind, 'people'> & Required<Pick<LeftBehind, 'settings'>>,
): Promise<void> {
  const staying = [...devicesOwn, ...people.map(({ id }) => `person:${id}`)];
  const kept = await Promise.all(staying.map((id) => storage.keys.get(id)));
  const keys = kept.filter((row) => row !== undefined);
  await storage.eraseEverything({ settings, people, keys });
}
