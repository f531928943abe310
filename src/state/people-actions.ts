/** What needs a PIN besides signing: coming to the stand, and what a supervisor says about people. */

import { ok, type Result, refuse } from '../engine/base';
import type { Person, StorageRefusal } from '../storage/contract';
import {
  activePerson,
  addPerson,
  isUsablePin,
  type NameMissing,
  type NewPerson,
  type PinNotUsable,
  retirePerson,
} from './people';
import type { AppPorts, KeysUnavailable, PinRefusal } from './ports';
import type { SessionStore } from './session';
import { createStandLock, type StandLock } from './stand-lock';
import { provenSupervisor, type Supervised, type SupervisionRefusal } from './standing-for';
import { attempted } from './storage-refusals';
import { notePerson } from './wrong-pins';

export interface IssuedPin extends Supervised {
  readonly person: string;
  readonly pin: string;
  readonly reason: string;
}

export type PinReasonMissing = { readonly code: 'reason-missing' };
export type LastSupervisor = { readonly code: 'last-supervisor' };
export type IssueRefusal = SupervisionRefusal | PinNotUsable | PinReasonMissing;
export type AddRefusal = SupervisionRefusal | KeysUnavailable | NameMissing | PinNotUsable;
export type RetireRefusal = SupervisionRefusal | LastSupervisor;

export interface PeopleActions {
  /** Comes to the stand, where the shop asks for a PIN. */
  comeWithPin(person: string, pin: string): Promise<Result<true, PinRefusal>>;
  /** A supervisor says who works here, and what they may do. */
  addPerson(person: NewPerson, by: Supervised): Promise<Result<Person, AddRefusal>>;
  /** They stay in every record; they only leave the list at the stand. */
  retirePerson(person: string, by: Supervised): Promise<Result<true, RetireRefusal>>;
  /** A supervisor gives a new PIN and key, with a reason; what was signed with the old key stays good. */
  issuePin(asked: IssuedPin): Promise<Result<true, IssueRefusal>>;
  /** Asks again who is there when nobody has been for a while. */
  standLock(): Promise<StandLock>;
  /** `data` where this browser refuses to keep keys as keys. */
  keysKeptAs(): Promise<Result<'keys' | 'data', KeysUnavailable>>;
}

type PeoplePorts = Pick<AppPorts, 'storage' | 'keys' | 'clock' | 'newId'>;

export function createPeopleActions(ports: PeoplePorts, session: SessionStore): PeopleActions {
  const { keys, clock } = ports;
  const noted = ({ id }: Person) => ({ by: id, at: clock.now() });
  return {
    async comeWithPin(person, pin) {
      const known = await keys.isPinOf(person, pin);
      if (known.ok) session.getState().come(person);
      return known;
    },

    async addPerson(person, by) {
      const supervisor = await provenSupervisor(ports, by);
      return supervisor.ok ? addPerson(ports, person, noted(supervisor.value)) : supervisor;
    },
    async retirePerson(person, by) {
      const supervisor = await provenSupervisor(ports, by);
      if (!supervisor.ok) return supervisor;
      if (await isLastSupervisor(ports, person)) return refuse({ code: 'last-supervisor' });
      return retirePerson(ports.storage, person, noted(supervisor.value));
    },
    issuePin: (asked) => issuePin(ports, asked),
    standLock: () => createStandLock(ports.storage.settings, session),
    keysKeptAs: () => keys.keptAs(),
  };
}

/** Without one, nobody could add a person or give a new PIN. */
async function isLastSupervisor(
  { storage }: Pick<PeoplePorts, 'storage'>,
  person: string,
): Promise<boolean> {
  const supervisors = (await storage.people.all()).filter(
    ({ active, roles }) => active && roles.includes('supervisor'),
  );
  return supervisors.length === 1 && supervisors[0]?.id === person;
}

async function issuePin(
  ports: PeoplePorts,
  { person, pin, reason, ...by }: IssuedPin,
): Promise<Result<true, IssueRefusal>> {
  const { storage, keys, clock } = ports;
  if (reason.trim() === '') return refuse({ code: 'reason-missing' });
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const owner = await activePerson(storage, person);
  if (!owner.ok) return owner;
  const supervisor = await provenSupervisor(ports, by);
  if (!supervisor.ok) return supervisor;
  // Noted first: a note without a new key does no harm, a new key without a note would.
  const noted = await attempted(() =>
    notePerson(storage, person, {
      kind: 'new-pin',
      by: supervisor.value.id,
      at: clock.now(),
      reason: reason.trim(),
    }),
  );
  if (!noted.ok) return noted;
  const made = await keys.createFor(person, pin);
  if (!made.ok) return made;
  return shownPin({ storage }, owner.value, pin);
}

/** In a demo shop the PIN that is shown changes with it. */
async function shownPin(
  { storage }: Pick<PeoplePorts, 'storage'>,
  { id, demoPin }: Person,
  pin: string,
): Promise<Result<true, StorageRefusal>> {
  if (demoPin === undefined) return ok(true);
  const kept = await attempted(() =>
    storage.people.change(id, (held) => held && { ...held, demoPin: pin }),
  );
  return kept.ok ? ok(true) : kept;
}
