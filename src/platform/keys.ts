/** Everyone's keys on this device: a person signs with a PIN, the device by itself. Public keys are kept for ever. */

import { ok, type Result, refuse } from '../engine/base';
import { type KeyShelf, type KeysUnavailable, keysUnavailable, putAndReadBack } from './key-shelf';
import { createPinKey, createPinVerifier, isPin, type PinVerifier } from './pin-verifier';
import {
  createSigningKey,
  type PublicKey,
  type SignatureWrong,
  type SigningKey,
  signPayload,
  verifyJws,
} from './signatures';

export interface Keys {
  /** A new pair for a person who has none, or who takes a new PIN; earlier public keys stay. */
  createFor(person: string, pin: string): Promise<Result<true, KeysUnavailable>>;
  signAs(
    person: string,
    pin: string,
    payload: unknown,
  ): Promise<Result<string, PinWrong | KeysUnavailable>>;
  signAsDevice(payload: unknown): Promise<Result<string, KeysUnavailable>>;
  /** The payload of a signature that this person has made; when none is named, one of the shop's devices. */
  verify(jws: string, person?: string): Promise<Result<unknown, SignatureWrong>>;
  /** By keys that came from elsewhere, for example with the file that the signature stands in. */
  verifyWith(
    jws: string,
    keys: readonly Readonly<Record<string, unknown>>[],
  ): Promise<Result<unknown, SignatureWrong>>;
}

export type PinWrong = { readonly code: 'pin-wrong' };

interface PersonKeys {
  readonly publicKeys: readonly PublicKey[];
  readonly signing: SigningKey;
  readonly pin: PinVerifier;
}

interface DeviceKeys {
  readonly publicKeys: readonly PublicKey[];
  readonly signing: SigningKey;
  readonly pinKey: CryptoKey;
}

export function createKeys(shelf: KeyShelf): Keys {
  let making: Promise<DeviceKeys> | undefined;

  async function deviceKeys(): Promise<DeviceKeys> {
    const kept = (await shelf.get('device'))?.value;
    if (hasSigning(kept) && 'pinKey' in kept) return kept as DeviceKeys; // written below and nowhere else
    making ??= makeDeviceKeys().finally(() => {
      making = undefined;
    });
    return making;
  }

  async function makeDeviceKeys(): Promise<DeviceKeys> {
    const signing = await createSigningKey();
    const value = { signing, publicKeys: [signing.publicKey], pinKey: await createPinKey() };
    return putAndReadBack<DeviceKeys>(shelf, { id: 'device', value }, isDeviceKeys);
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

  return {
    createFor: (person, pin) =>
      answered(async () => {
        const { pinKey } = await deviceKeys();
        const signing = await createSigningKey();
        const publicKeys = [...(await publicKeysOf(rowOf(person))), signing.publicKey];
        const value = { signing, publicKeys, pin: await createPinVerifier(pin, pinKey) };
        await putAndReadBack<PersonKeys>(shelf, { id: rowOf(person), value }, isPersonKeys);
        return true as const;
      }),

    async signAs(person, pin, payload) {
      const signed = await answered(async () => {
        const kept = (await shelf.get(rowOf(person)))?.value;
        if (!isPersonKeys(kept)) throw new Error('this device holds no key for this person');
        const { pinKey } = await deviceKeys();
        if (!(await isPin(pin, kept.pin, pinKey))) return undefined;
        return signPayload(kept.signing, payload);
      });
      if (!signed.ok) return signed;
      return signed.value === undefined ? refuse({ code: 'pin-wrong' }) : ok(signed.value);
    },

    signAsDevice: (payload) =>
      answered(async () => signPayload((await deviceKeys()).signing, payload)),

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

function hasSigning(value: unknown): value is { readonly signing: SigningKey } {
  if (typeof value !== 'object' || value === null || !('signing' in value)) return false;
  const { signing } = value;
  if (typeof signing !== 'object' || signing === null || !('privateKey' in signing)) return false;
  return signing.privateKey instanceof CryptoKey;
}

function isPersonKeys(value: unknown): value is PersonKeys {
  return hasSigning(value) && 'pin' in value;
}

function isDeviceKeys(value: unknown): value is DeviceKeys {
  return hasSigning(value) && 'pinKey' in value && value.pinKey instanceof CryptoKey;
}
