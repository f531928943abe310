/** A private key kept as data, for browsers that refuse to keep CryptoKeys: encrypted under what its owner's PIN derives. */

import { pinRounds, stretchedPin } from './pin-verifier';
import { exportPublicKey, type PublicKey, type SigningKey } from './signatures';

/** AES-256-GCM over PKCS #8 (NIST SP 800-38D: 96-bit nonce, never used twice because each wrapping has its own salt). */
export interface WrappedKey {
  readonly salt: Uint8Array<ArrayBuffer>;
  readonly nonce: Uint8Array<ArrayBuffer>;
  readonly sealed: Uint8Array<ArrayBuffer>;
  readonly rounds: number;
}

const ecdsa = { name: 'ECDSA', namedCurve: 'P-256' } as const;

/** A new pair whose private half is readable for as long as it takes to wrap it. */
export async function createKeyAsData(): Promise<{
  readonly publicKey: PublicKey;
  readonly pkcs8: Uint8Array<ArrayBuffer>;
}> {
  const pair = await crypto.subtle.generateKey(ecdsa, true, ['sign', 'verify']);
  const pkcs8 = new Uint8Array(await crypto.subtle.exportKey('pkcs8', pair.privateKey));
  return { publicKey: await exportPublicKey(pair.publicKey), pkcs8 };
}

export async function wrapKey(pkcs8: Uint8Array<ArrayBuffer>, pin: string): Promise<WrappedKey> {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const nonce = crypto.getRandomValues(new Uint8Array(12));
  const key = await wrappingKey(pin, salt, pinRounds, 'encrypt');
  const sealed = await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce }, key, pkcs8);
  return { salt, nonce, sealed: new Uint8Array(sealed), rounds: pinRounds };
}

/** Undefined when the PIN is another: GCM's tag does not fit then. */
export async function unwrapKey(
  { salt, nonce, sealed, rounds }: WrappedKey,
  pin: string,
): Promise<CryptoKey | undefined> {
  const key = await wrappingKey(pin, salt, rounds, 'decrypt');
  const pkcs8 = await crypto.subtle
    .decrypt({ name: 'AES-GCM', iv: nonce }, key, sealed)
    .catch(() => undefined);
  return pkcs8 && signingKeyFrom(pkcs8);
}

/** Usable in memory only, and not readable from there. */
export function signingKeyFrom(pkcs8: BufferSource): Promise<SigningKey['privateKey']> {
  return crypto.subtle.importKey('pkcs8', pkcs8, ecdsa, false, ['sign']);
}

async function wrappingKey(
  pin: string,
  salt: Uint8Array<ArrayBuffer>,
  rounds: number,
  use: 'encrypt' | 'decrypt',
): Promise<CryptoKey> {
  const bits = await stretchedPin(pin, salt, rounds);
  return crypto.subtle.importKey('raw', bits, 'AES-GCM', false, [use]);
}
