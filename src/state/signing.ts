/** Signing: over the heads that were read, outside any transaction, and then into the log. */

import { ok, type Result, refuse } from '../engine/base';
import { digestOf, digestOfBytes } from '../engine/integrity';
import type { Asked, Meaning, Signing } from '../engine/job';
import type { Customer, KeptBlob, Person, Storage } from '../storage/contract';
import type { Extras, Perform, Performed, PerformRefusal } from './perform';
import type { Clock, Keys, KeysUnavailable, PinRefusal } from './ports';

export interface SigningPorts {
  readonly storage: Pick<Storage, 'row'>;
  readonly perform: Perform;
  readonly clock: Clock;
  readonly keys: Keys;
  readonly newId: () => string;
}

export interface Signer {
  readonly person: Person;
  readonly pin: string;
}

export type SignRefusal = PerformRefusal | PinRefusal | { readonly code: 'job-missing' };

/** The mechanic's signature that it is built, or the second checker's that it is good. */
export function sign(
  ports: SigningPorts,
  job: string,
  meaning: 'built' | 'checked',
  signer: Signer,
): Promise<Result<Performed, SignRefusal>> {
  const kind = meaning === 'built' ? 'sign-built' : 'sign-checked';
  const named = { meaning, name: signer.person.name };
  return signed(ports, job, named, signer, (signing) => ({ kind, signing }));
}

export interface HandingOver {
  readonly customer: { readonly name: string; readonly contact?: string };
  readonly told: readonly string[];
  /** ISO date. */
  readonly firstCheck: string;
  /** The customer's signature as vector strokes, in SVG. */
  readonly strokes: string;
}

/** The customer signs on the screen; who hands over vouches for it with their own key. */
export async function handOver(
  ports: SigningPorts,
  job: string,
  { customer: given, told, firstCheck, strokes }: HandingOver,
  signer: Signer,
): Promise<Result<Performed, SignRefusal>> {
  const customer = customerRow(given, ports.newId());
  const drawn = drawnBlob(strokes);
  const named = {
    meaning: 'received' as const,
    name: signer.person.name,
    customer: customer.digest,
    strokes: drawn.digest,
  };
  const asked = (signing: Signing): Asked => ({
    kind: 'hand-over',
    customer: customer.digest,
    told,
    firstCheck,
    signing,
  });
  return signed(ports, job, named, signer, asked, { customer, blobs: [drawn] });
}

type Named = Omit<Signing, 'heads' | 'jws'> & { readonly meaning: Meaning };

/** When the log moved between reading and writing, what is signed is read and signed once more. */
async function signed(
  ports: SigningPorts,
  job: string,
  named: Named,
  { person, pin }: Signer,
  askedWith: (signing: Signing) => Asked,
  extras?: Extras,
): Promise<Result<Performed, SignRefusal>> {
  for (let isSecond = false; ; isSecond = true) {
    const row = await ports.storage.row(job);
    if (row === undefined) return refuse({ code: 'job-missing' });
    const { heads, frameNumber: frame } = row;
    const payload = { job, frame, by: person.id, at: ports.clock.now().claimed, ...named, heads };
    const jws = await ports.keys.signAs(person.id, pin, payload);
    if (!jws.ok) return jws;
    const asked = askedWith({ ...named, heads, jws: jws.value });
    const done = await ports.perform(job, asked, person, extras);
    if (done.ok || isSecond || done.refusal.code !== 'signature-overtaken') return done;
  }
}

/** Only the digest goes into the log; without the salt, which is erased with the row, it says nothing. */
function customerRow(given: HandingOver['customer'], salt: string): Customer {
  const details = {
    name: given.name.trim(),
    ...(given.contact?.trim() && { contact: given.contact.trim() }),
  };
  return { digest: digestOf({ salt, ...details }), salt, ...details };
}

function drawnBlob(strokes: string): KeptBlob {
  const bytes = new TextEncoder().encode(strokes);
  return { digest: digestOfBytes(bytes), type: 'image/svg+xml', bytes };
}

/** A short proof for the sheet: which record, which frame, sealed at which head, on which day. */
export async function sealCode(
  { storage, keys, clock }: Pick<SigningPorts, 'storage' | 'keys' | 'clock'>,
  job: string,
): Promise<Result<string, KeysUnavailable | { readonly code: 'job-missing' }>> {
  const row = await storage.row(job);
  if (row === undefined) return refuse({ code: 'job-missing' });
  const { heads, frameNumber: frame } = row;
  const code = await keys.signAsDevice({ job, frame, head: heads.join(' '), on: clock.today() });
  return code.ok ? ok(code.value) : code;
}
