/** Who stands for something with their own PIN, whoever is at the stand. */

import { ok, type Result, refuse } from '../engine/base';
import type { Person, StorageRefusal } from '../storage/contract';
import { activePerson, type PersonUnknown } from './people';
import type { AppPorts, PinRefusal } from './ports';

/** A supervisor and their PIN: asked for what changes who may do what, or lets something go. */
export interface Supervised {
  readonly supervisor: string;
  readonly supervisorPin: string;
}

export type NotASupervisor = { readonly code: 'not-a-supervisor' };
export type ProofRefusal = StorageRefusal | PersonUnknown | PinRefusal;
export type SupervisionRefusal = ProofRefusal | NotASupervisor;

type ProofPorts = Pick<AppPorts, 'storage' | 'keys'>;

/** Somebody who works here, and whose PIN this is. */
export async function provenPerson(
  { storage, keys }: ProofPorts,
  id: string,
  pin: string,
): Promise<Result<Person, ProofRefusal>> {
  const found = await activePerson(storage, id);
  if (!found.ok) return found;
  const known = await keys.isPinOf(id, pin);
  return known.ok ? found : known;
}

/** The role is looked at before the PIN: a PIN tried for nothing is not counted. */
export async function provenSupervisor(
  ports: ProofPorts,
  { supervisor, supervisorPin }: Supervised,
): Promise<Result<Person, SupervisionRefusal>> {
  const found = await activePerson(ports.storage, supervisor);
  if (!found.ok) return found;
  if (!found.value.roles.includes('supervisor')) return refuse({ code: 'not-a-supervisor' });
  const known = await ports.keys.isPinOf(supervisor, supervisorPin);
  return known.ok ? ok(found.value) : known;
}
