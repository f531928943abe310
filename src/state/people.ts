/** People of the shop: they come with a PIN and a key, and never leave a record. */

import { ok, type Result, refuse } from '../engine/base';
import type { Role } from '../engine/job';
import type { Person, Storage, StorageRefusal } from '../storage/contract';
import type { Keys, KeysUnavailable } from './ports';
import { attempted } from './storage-refusals';

export interface NewPerson {
  readonly name: string;
  readonly roles: readonly Role[];
  readonly pin: string;
}

export type NameMissing = { readonly code: 'name-missing' };
export type PinNotUsable = { readonly code: 'pin-not-usable' };

/** Six digits that are not one digit over and over, nor a run up or down. */
export function isUsablePin(pin: string): boolean {
  if (!/^\d{6}$/.test(pin)) return false;
  const steps = [...pin].slice(1).map((digit, index) => Number(digit) - Number(pin[index]));
  const [first] = steps;
  const isEven = steps.every((step) => step === first);
  return !(isEven && first !== undefined && Math.abs(first) <= 1);
}

export async function addPerson(
  {
    storage,
    keys,
    newId,
  }: {
    readonly storage: Pick<Storage, 'people'>;
    readonly keys: Keys;
    readonly newId: () => string;
  },
  { name, roles, pin }: NewPerson,
): Promise<Result<Person, StorageRefusal | KeysUnavailable | NameMissing | PinNotUsable>> {
  const person: Person = { id: newId(), name: name.trim(), roles, active: true };
  if (person.name === '') return refuse({ code: 'name-missing' });
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const made = await keys.createFor(person.id, pin);
  if (!made.ok) return made;
  const kept = await attempted(() => storage.people.put(person));
  return kept.ok ? ok(person) : kept;
}

/** In a demo shop the PIN that is shown changes with it. */
export async function changePin(
  { storage, keys }: { readonly storage: Pick<Storage, 'people'>; readonly keys: Keys },
  id: string,
  pin: string,
): Promise<Result<true, StorageRefusal | KeysUnavailable | PinNotUsable>> {
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const made = await keys.createFor(id, pin);
  if (!made.ok) return made;
  const kept = await attempted(async () => {
    const person = await storage.people.get(id);
    if (person?.demoPin !== undefined) await storage.people.put({ ...person, demoPin: pin });
  });
  return kept.ok ? ok(true) : kept;
}

export async function retirePerson(
  { people }: Pick<Storage, 'people'>,
  id: string,
): Promise<Result<true, StorageRefusal>> {
  const kept = await attempted(async () => {
    const person = await people.get(id);
    if (person !== undefined) await people.put({ ...person, active: false });
  });
  return kept.ok ? ok(true) : kept;
}
