/** People of the shop: they come with a PIN and a key, and never leave a record. */

import { ok, type Result, refuse } from '../engine/base';
import type { Role } from '../engine/job';
import type { Person, PersonNote, Storage, StorageRefusal } from '../storage/contract';
import type { Keys, KeysUnavailable } from './ports';
import { attempted } from './storage-refusals';
import { notePerson } from './wrong-pins';

export interface NewPerson {
  readonly name: string;
  readonly roles: readonly Role[];
  readonly pin: string;
}

export type NameMissing = { readonly code: 'name-missing' };
export type PinNotUsable = { readonly code: 'pin-not-usable' };
export type PinHeldAlready = { readonly code: 'pin-held-already' };
/** By whom and when. */
export type NotedNow = Pick<PersonNote, 'by' | 'at'>;

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
  note: NotedNow,
): Promise<Result<Person, StorageRefusal | KeysUnavailable | NameMissing | PinNotUsable>> {
  const person: Person = {
    id: newId(),
    name: name.trim(),
    roles,
    active: true,
    history: [{ kind: 'joined', ...note }],
  };
  if (person.name === '') return refuse({ code: 'name-missing' });
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const made = await keys.createFor(person.id, pin);
  if (!made.ok) return made;
  const kept = await attempted(() => storage.people.put(person));
  return kept.ok ? ok(person) : kept;
}

/** A first PIN on a device that holds no key of theirs; where it holds one, a supervisor gives the new one. */
export async function choosePin(
  { storage, keys }: { readonly storage: Pick<Storage, 'people'>; readonly keys: Keys },
  id: string,
  pin: string,
  note: NotedNow,
): Promise<Result<true, StorageRefusal | KeysUnavailable | PinNotUsable | PinHeldAlready>> {
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  if (await keys.holds(id)) return refuse({ code: 'pin-held-already' });
  const made = await keys.createFor(id, pin);
  if (!made.ok) return made;
  const kept = await attempted(() => notePerson(storage, id, { kind: 'pin-here', ...note }));
  return kept.ok ? ok(true) : kept;
}

/** Their public keys stay, so that everything they have signed can still be checked. */
export async function retirePerson(
  { people }: Pick<Storage, 'people'>,
  id: string,
  note: NotedNow,
): Promise<Result<true, StorageRefusal>> {
  const left: PersonNote = { kind: 'left', ...note };
  const kept = await attempted(() =>
    people.change(
      id,
      (held) => held && { ...held, active: false, history: [...(held.history ?? []), left] },
    ),
  );
  return kept.ok ? ok(true) : kept;
}

export type PersonUnknown = { readonly code: 'person-unknown' };

/** Somebody who works here. */
export async function activePerson(
  { people }: Pick<Storage, 'people'>,
  id: string,
): Promise<Result<Person, StorageRefusal | PersonUnknown>> {
  const read = await attempted(() => people.get(id));
  if (!read.ok) return read;
  return read.value?.active ? ok(read.value) : refuse({ code: 'person-unknown' });
}
