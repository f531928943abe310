/** What needs a PIN besides signing: coming to the stand, and a new PIN for whoever lost theirs. */

import { ok, type Result, refuse } from '../engine/base';
import type { Person, StorageRefusal } from '../storage/contract';
import { activePerson, isUsablePin, type PersonUnknown, type PinNotUsable } from './people';
import type { AppPorts, KeysUnavailable, PinRefusal } from './ports';
import type { SessionStore } from './session';
import { createStandLock, type StandLock } from './stand-lock';
import { attempted } from './storage-refusals';
import { notePerson } from './wrong-pins';

export interface IssuedPin {
  readonly person: string;
  readonly pin: string;
  readonly reason: string;
  readonly supervisor: string;
  readonly supervisorPin: string;
}

export type NotASupervisor = { readonly code: 'not-a-supervisor' };
export type PinReasonMissing = { readonly code: 'reason-missing' };
export type IssueRefusal =
  | StorageRefusal
  | PinRefusal
  | PinNotUsable
  | PersonUnknown
  | NotASupervisor
  | PinReasonMissing;

export interface PeopleActions {
  /** Comes to the stand, where the shop asks for a PIN. */
  comeWithPin(person: string, pin: string): Promise<Result<true, PinRefusal>>;
  /** Whether this is their PIN: for what somebody stands for without signing. */
  provePin(person: string, pin: string): Promise<Result<true, PinRefusal>>;
  /** A supervisor gives a new PIN and key, with a reason; what was signed with the old key stays good. */
  issuePin(asked: IssuedPin): Promise<Result<true, IssueRefusal>>;
  /** Asks again who is there when nobody has been for a while. */
  standLock(): Promise<StandLock>;
  /** `data` where this browser refuses to keep keys as keys. */
  keysKeptAs(): Promise<Result<'keys' | 'data', KeysUnavailable>>;
}

type PeoplePorts = Pick<AppPorts, 'storage' | 'keys' | 'clock'>;

export function createPeopleActions(ports: PeoplePorts, session: SessionStore): PeopleActions {
  const { keys } = ports;
  return {
    async comeWithPin(person, pin) {
      const known = await keys.isPinOf(person, pin);
      if (known.ok) session.getState().come(person);
      return known;
    },

    provePin: (person, pin) => keys.isPinOf(person, pin),
    issuePin: (asked) => issuePin(ports, asked),
    standLock: () => createStandLock(ports.storage.settings, session),
    keysKeptAs: () => keys.keptAs(),
  };
}

async function issuePin(
  { storage, keys, clock }: PeoplePorts,
  { person, pin, reason, supervisor, supervisorPin }: IssuedPin,
): Promise<Result<true, IssueRefusal>> {
  if (reason.trim() === '') return refuse({ code: 'reason-missing' });
  if (!isUsablePin(pin)) return refuse({ code: 'pin-not-usable' });
  const issuer = await activePerson(storage, supervisor);
  if (!issuer.ok) return issuer;
  if (!issuer.value.roles.includes('supervisor')) return refuse({ code: 'not-a-supervisor' });
  const owner = await activePerson(storage, person);
  if (!owner.ok) return owner;
  const known = await keys.isPinOf(supervisor, supervisorPin);
  if (!known.ok) return known;
  // Noted first: a note without a new key does no harm, a new key without a note would.
  const noted = await attempted(() =>
    notePerson(storage, person, {
      kind: 'new-pin',
      by: supervisor,
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
