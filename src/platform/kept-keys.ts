/** The forms in which keys are kept: as keys that nobody can read out, or, where the browser refuses those, as data. */

import { type KeyShelf, putAndReadBack } from './key-shelf';
import { createPinKey, createPinVerifier, isPin, type PinVerifier } from './pin-verifier';
import { createSigningKey, type PublicKey, type SigningKey } from './signatures';
import {
  createKeyAsData,
  signingKeyFrom,
  unwrapKey,
  type WrappedKey,
  wrapKey,
} from './wrapped-key';

export type KeptAs = 'keys' | 'data';

interface WithPublicKeys {
  /** Every public key there has been, the last one the one that signs; never shortened. */
  readonly publicKeys: readonly PublicKey[];
}

type PersonRow = WithPublicKeys &
  (
    | { readonly signing: SigningKey; readonly pin: PinVerifier }
    | { readonly publicKey: PublicKey; readonly wrapped: WrappedKey }
  );

type DeviceRow = WithPublicKeys &
  (
    | { readonly signing: SigningKey; readonly pinKey: CryptoKey }
    | { readonly publicKey: PublicKey; readonly pkcs8: Uint8Array<ArrayBuffer> }
  );

/** Tried as keys first; where that is refused, or gives nothing back, as data. */
export async function keepDevice(shelf: KeyShelf, earlier: readonly PublicKey[]): Promise<void> {
  try {
    const signing = await createSigningKey();
    const publicKeys = [...earlier, signing.publicKey];
    const value = { signing, publicKeys, pinKey: await createPinKey() };
    await putAndReadBack<DeviceRow>(shelf, { id: 'device', value }, hasCryptoKey('pinKey'));
  } catch (error) {
    if (isAboutTheDisk(error)) throw error;
    // Nobody types a PIN for the device, so this key is as safe as this browser's data, and no safer.
    const { publicKey, pkcs8 } = await createKeyAsData();
    const value = { publicKey, publicKeys: [...earlier, publicKey], pkcs8 };
    await putAndReadBack<DeviceRow>(shelf, { id: 'device', value }, hasBytes('pkcs8'));
  }
}

export async function keepPerson(
  shelf: KeyShelf,
  id: string,
  pin: string,
  { device, earlier }: { readonly device: DeviceRow; readonly earlier: readonly PublicKey[] },
): Promise<void> {
  if ('pinKey' in device) {
    const signing = await createSigningKey();
    const publicKeys = [...earlier, signing.publicKey];
    const value = { signing, publicKeys, pin: await createPinVerifier(pin, device.pinKey) };
    await putAndReadBack<PersonRow>(shelf, { id, value }, hasCryptoKey('signing'));
    return;
  }
  const { publicKey, pkcs8 } = await createKeyAsData();
  const value = {
    publicKey,
    publicKeys: [...earlier, publicKey],
    wrapped: await wrapKey(pkcs8, pin),
  };
  await putAndReadBack<PersonRow>(shelf, { id, value }, hasWrapped);
}

/** The key that signs for this person when the PIN is theirs; undefined when it is not. */
export async function openPerson(
  row: PersonRow,
  pin: string,
  device: DeviceRow,
): Promise<SigningKey | undefined> {
  if ('wrapped' in row) {
    const privateKey = await unwrapKey(row.wrapped, pin);
    return privateKey && { privateKey, publicKey: row.publicKey };
  }
  if (!('pinKey' in device)) throw new Error('the key that knows the PIN is gone');
  return (await isPin(pin, row.pin, device.pinKey)) ? row.signing : undefined;
}

export async function openDevice(row: DeviceRow): Promise<SigningKey> {
  if ('signing' in row) return row.signing;
  return { privateKey: await signingKeyFrom(row.pkcs8), publicKey: row.publicKey };
}

export function isPersonRow(value: unknown): value is PersonRow {
  return (hasCryptoKey('signing')(value) && 'pin' in value) || hasWrapped(value);
}

export function isDeviceRow(value: unknown): value is DeviceRow {
  return hasCryptoKey('pinKey')(value) || hasBytes('pkcs8')(value);
}

export function keptAs(row: DeviceRow): KeptAs {
  return 'pinKey' in row ? 'keys' : 'data';
}

/** A full or blocked disk says nothing about keys: it must not make this browser keep them as data for good. */
function isAboutTheDisk(error: unknown): boolean {
  if (!isObject(error) || !('refusal' in error)) return false;
  const { refusal } = error;
  return isObject(refusal) && 'code' in refusal && refusal.code !== 'storage-failed';
}

/** A key that can sign, and beside it what `also` names; some browsers give back an object without the key. */
function hasCryptoKey(also: 'signing' | 'pinKey') {
  return <Row>(value: unknown): value is Row & object => {
    if (!isObject(value) || !('signing' in value) || !isObject(value.signing)) return false;
    const { signing } = value;
    if (!('privateKey' in signing) || !(signing.privateKey instanceof CryptoKey)) return false;
    return also === 'signing' || ('pinKey' in value && value.pinKey instanceof CryptoKey);
  };
}

function hasBytes(name: string) {
  return <Row>(value: unknown): value is Row & object =>
    isObject(value) && (value as Readonly<Record<string, unknown>>)[name] instanceof Uint8Array;
}

function hasWrapped<Row>(value: unknown): value is Row & object {
  return isObject(value) && 'wrapped' in value && hasBytes('sealed')(value.wrapped);
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
