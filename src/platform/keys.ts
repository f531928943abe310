/** Everyone's keys on this device: a person signs with a PIN, the device by itself. Public keys are kept for ever. */

import { ok, type Result, refuse } from '../engine/base';
import {
  isDeviceRow,
  isPersonRow,
  type KeptAs,
  keepDevice,
  keepPerson,
  keptAs,
  openDevice,
  openPerson,
} from './kept-keys';
import { type KeyShelf, type KeysUnavailable, keysUnavailable } from './key-shelf';
import { createPinWaits } from './pin-waits';
import {
  type PublicKey,
  type SignatureWrong,
  type SigningKey,
  signPayload,
  verifyJws,
} from './signatures';

export interface Keys {
  /** A new pair for a person who has none, or who takes a new PIN; earlier public keys stay. */
  createFor(person: string, pin: string): Promise<Result<true, KeysUnavailable>>;
  signAs(person: string, pin: string, payload: unknown): Promise<Result<string, PinRefusal>>;
  /** Whether this is their PIN; a wrong one counts as it does when signing. */
  isPinOf(person: string, pin: string): Promise<Result<true, PinRefusal>>;
  signAsDevice(payload: unknown): Promise<Result<string, KeysUnavailable>>;
  /** Whether this device can sign for them. */
  holds(person: string): Promise<boolean>;
  /** How this browser keeps keys: `data` where it refuses to keep them as keys. Makes the device's key if there is none. */
  keptAs(): Promise<Result<KeptAs, KeysUnavailable>>;
  /** The payload of a signature that this person has made; when none is named, one of the shop's devices. */
  verify(jws: string, person?: string): Promise<Result<unknown, SignatureWrong>>;
  /** By keys that came from elsewhere, for example with the file that the signature stands in. */
  verifyWith(
    jws: string,
    keys: readonly Readonly<Record<string, unknown>>[],
  ): Promise<Result<unknown, SignatureWrong>>;
}

/** `seconds` is there when the next try has to wait. */
export type PinWrong = { readonly code: 'pin-wrong'; readonly seconds?: number };
/** Not looked at: too many wrong ones before. */
export type PinWaits = { readonly code: 'pin-waits'; readonly seconds: number };
export type PinRefusal = PinWrong | PinWaits | KeysUnavailable;

export function createKeys(shelf: KeyShelf, now: () => number = Date.now): Keys {
  const waits = createPinWaits(shelf, now);
  let making: Promise<void> | undefined;

  async function deviceRow() {
    const kept = (await shelf.get('device'))?.value;
    if (isDeviceRow(kept)) return kept;
    making ??= publicKeysOf('device')
      .then((earlier) => keepDevice(shelf, earlier))
      .finally(() => {
        making = undefined;
      });
    await making;
    const made = (await shelf.get('device'))?.value;
    if (!isDeviceRow(made)) throw new Error('the browser did not keep the key');
    return made;
  }

  async function publicKeysOf(id: string): Promise<readonly PublicKey[]> {
    const kept = (await shelf.get(id))?.value;
    if (typeof kept !== 'object' || kept === null || !('publicKeys' in kept)) return [];
    return kept.publicKeys as readonly PublicKey[]; // every row of this shelf that has them has a list
  }

  async function answered<T>(work: () => Promise<T>): Promise<Result<T, KeysUnavailable>> {
    try {
      return ok(await work());
    } catch (error) {
      return refuse(keysUnavailable(error));
    }
  }

  /** Opens a person's key by their PIN, or says why not and for how long. */
  async function opened(person: string, pin: string): Promise<Result<SigningKey, PinRefusal>> {
    const tried = await answered(async () => {
      const row = (await shelf.get(rowOf(person)))?.value;
      if (!isPersonRow(row)) throw new Error('this device holds no key for this person');
      const left = await waits.begin(person);
      if (left > 0) return refuse({ code: 'pin-waits', seconds: left } as const);
      try {
        const key = await openPerson(row, pin, await deviceRow());
        if (key !== undefined) {
          await waits.succeed(person);
          return ok(key);
        }
      } catch (error) {
        await waits.takeBack(person);
        throw error;
      }
      const seconds = await waits.fail(person);
      return refuse({ code: 'pin-wrong', ...(seconds > 0 && { seconds }) } as const);
    });
    return tried.ok ? tried.value : tried;
  }

  return {
    createFor: (person, pin) =>
      answered(async () => {
        const device = await deviceRow();
        const earlier = await publicKeysOf(rowOf(person));
        await keepPerson(shelf, rowOf(person), pin, { device, earlier });
        await waits.succeed(person);
        return true as const;
      }),

    async signAs(person, pin, payload) {
      const key = await opened(person, pin);
      return key.ok ? answered(() => signPayload(key.value, payload)) : key;
    },

    async isPinOf(person, pin) {
      const key = await opened(person, pin);
      return key.ok ? ok(true) : key;
    },

    signAsDevice: (payload) =>
      answered(async () => signPayload(await openDevice(await deviceRow()), payload)),

    holds: async (person) => isPersonRow((await shelf.get(rowOf(person)))?.value),

    keptAs: () => answered(async () => keptAs(await deviceRow())),

    async verify(jws, person) {
      const rows = person === undefined ? ['device', 'former-devices'] : [rowOf(person)];
      // Keys that came with a file stand in rows of their own.
      const known = await Promise.all([...rows, `brought:${rows[0]}`].map(publicKeysOf));
      return verifyJws(jws, known.flat());
    },

    verifyWith: (jws, keys) => verifyJws(jws, keys as readonly PublicKey[]), // a key that is none verifies nothing
  };
}

function rowOf(person: string): string {
  return `person:${person}`;
}
