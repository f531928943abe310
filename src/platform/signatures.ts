/** Signatures: compact JWS with ES256 over canonical JSON (RFC 7515, 7518), and key pairs that cannot leave the device. */

import {
  CompactSign,
  calculateJwkThumbprint,
  compactVerify,
  exportJWK,
  importJWK,
  type JWK,
} from 'jose';
import { ok, type Result, refuse } from '../engine/base';
import { canonicalJson } from '../engine/integrity';

export type PublicKey = JWK;

export interface SigningKey {
  readonly privateKey: CryptoKey;
  readonly publicKey: PublicKey;
}

export async function createSigningKey(): Promise<SigningKey> {
  const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
    'sign',
    'verify',
  ]);
  return { privateKey: pair.privateKey, publicKey: await exportPublicKey(pair.publicKey) };
}

export async function exportPublicKey(key: CryptoKey): Promise<PublicKey> {
  const { kty, crv, x, y } = await exportJWK(key);
  return { kty, crv, x, y } as PublicKey; // all four are set for EC keys
}

export async function signPayload(key: SigningKey, payload: unknown): Promise<string> {
  const kid = await calculateJwkThumbprint(key.publicKey);
  return new CompactSign(new TextEncoder().encode(canonicalJson(payload)))
    .setProtectedHeader({ alg: 'ES256', kid })
    .sign(key.privateKey);
}

/** The payload, when one of the keys has signed it. Only decoded bytes count: two texts can be the same signature. */
export async function verifyJws(
  jws: string,
  keys: readonly PublicKey[],
): Promise<Result<unknown, SignatureWrong>> {
  if (keys.length === 0) return refuse({ code: 'signer-unknown' });
  for (const key of keys) {
    try {
      const { payload } = await compactVerify(jws, await importJWK(key, 'ES256'), {
        algorithms: ['ES256'],
      });
      return ok(JSON.parse(new TextDecoder().decode(payload)));
    } catch {
      // Not this key; a later one may be the right one.
    }
  }
  return refuse({ code: 'signature-wrong' });
}
/** `signer-unknown`: there is no key to hold the signature against. */
export type SignatureWrong = { readonly code: 'signature-wrong' | 'signer-unknown' };
