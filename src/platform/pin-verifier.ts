/** The PIN: a gesture that says "I sign", not a login. It is never kept, only what can tell it again on this device. */

export interface PinVerifier {
  readonly salt: Uint8Array<ArrayBuffer>;
  readonly verifier: Uint8Array<ArrayBuffer>;
}

/** OWASP Password Storage Cheat Sheet: PBKDF2 with SHA-256, 600,000 rounds. */
export const pinRounds = 600_000;

/** A key that cannot be read out keys the verifier, because no stretching saves six digits from guessing elsewhere. */
export function createPinKey(): Promise<CryptoKey> {
  return crypto.subtle.generateKey({ name: 'HMAC', hash: 'SHA-256' }, false, ['sign', 'verify']);
}

export async function createPinVerifier(pin: string, pinKey: CryptoKey): Promise<PinVerifier> {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const stretched = await stretchedPin(pin, salt);
  return { salt, verifier: new Uint8Array(await crypto.subtle.sign('HMAC', pinKey, stretched)) };
}

export async function isPin(
  pin: string,
  { salt, verifier }: PinVerifier,
  pinKey: CryptoKey,
): Promise<boolean> {
  return crypto.subtle.verify('HMAC', pinKey, verifier, await stretchedPin(pin, salt));
}

/** 256 bits that only this PIN and this salt give. */
export async function stretchedPin(
  pin: string,
  salt: BufferSource,
  iterations = pinRounds,
): Promise<ArrayBuffer> {
  const typed = await crypto.subtle.importKey(
    'raw',
    new TextEncoder().encode(pin),
    'PBKDF2',
    false,
    ['deriveBits'],
  );
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations };
  return crypto.subtle.deriveBits(how, typed, 256);
}
