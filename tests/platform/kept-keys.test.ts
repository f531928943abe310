/** Where a browser refuses CryptoKeys, as private windows do, keys are kept as data under the PIN, and sign as well. */

import { describe, expect, test } from 'vitest';
import type { KeyShelf } from '../../src/platform/key-shelf';
import { createKeys } from '../../src/platform/keys';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createStorageProblem } from '../../src/storage/storage-problem';

const pin = '274913';

function holdsCryptoKey(value: unknown): boolean {
  if (value instanceof CryptoKey) return true;
  if (typeof value !== 'object' || value === null || value instanceof Uint8Array) return false;
  return Object.values(value).some(holdsCryptoKey);
}

/** A real shelf in memory, except for rows with a CryptoKey in them. */
function refusing(how: 'throws' | 'forgets' | 'empties'): KeyShelf & { raw: KeyShelf } {
  const raw = createMemoryStorage().keys;
  return {
    raw,
    get: raw.get,
    change: raw.change,
    async put(row) {
      if (!holdsCryptoKey(row.value)) return raw.put(structuredClone(row));
      if (how === 'throws')
        throw createStorageProblem({ code: 'storage-failed', cause: 'DataCloneError: a key' });
      if (how === 'empties') await raw.put(JSON.parse(JSON.stringify(row)));
    },
  };
}

describe.each(['throws', 'forgets', 'empties'] as const)('a browser that %s', (how) => {
  test('keeps keys as data, and says so', async () => {
    const keys = createKeys(refusing(how));
    expect(await keys.createFor('noor', pin)).toEqual({ ok: true, value: true });
    expect(await keys.keptAs()).toEqual({ ok: true, value: 'data' });
    expect(await keys.holds('noor')).toBe(true);
  });

  test('signs with the right PIN, also after a reload, and refuses a wrong one', async () => {
    const shelf = refusing(how);
    await createKeys(shelf).createFor('noor', pin);
    const keys = createKeys(shelf);
    const signed = await keys.signAs('noor', pin, { job: 'j' });
    if (!signed.ok) throw new Error(signed.refusal.code);
    expect(await keys.verify(signed.value, 'noor')).toEqual({ ok: true, value: { job: 'j' } });
    expect(await keys.signAs('noor', '274914', {})).toEqual({
      ok: false,
      refusal: { code: 'pin-wrong' },
    });
    const device = await keys.signAsDevice({ n: 1 });
    expect(device.ok && (await keys.verify(device.value)).ok).toBe(true);
  });

  test('keeps earlier public keys with a new PIN', async () => {
    const keys = createKeys(refusing(how));
    await keys.createFor('noor', pin);
    const before = await keys.signAs('noor', pin, { n: 1 });
    await keys.createFor('noor', '508236');
    expect(before.ok && (await keys.verify(before.value, 'noor')).ok).toBe(true);
    expect((await keys.signAs('noor', pin, {})).ok).toBe(false);
    expect((await keys.signAs('noor', '508236', {})).ok).toBe(true);
  });
});

test('a key kept as data is neither readable nor beside its PIN', async () => {
  const shelf = refusing('throws');
  await createKeys(shelf).createFor('noor', pin);
  const row = (await shelf.raw.get('person:noor'))?.value as {
    wrapped: { sealed: Uint8Array<ArrayBuffer>; rounds: number; salt: Uint8Array };
  };
  // OWASP Password Storage Cheat Sheet: PBKDF2-HMAC-SHA256 with 600,000 rounds.
  expect(row.wrapped.rounds).toBe(600_000);
  expect(row.wrapped.salt).toHaveLength(16);
  const { sealed } = row.wrapped;
  const ecdsa = { name: 'ECDSA', namedCurve: 'P-256' };
  await expect(crypto.subtle.importKey('pkcs8', sealed, ecdsa, false, ['sign'])).rejects.toThrow();
  expect(JSON.stringify(row)).not.toContain(pin);
});

test('two keys wrapped under the same PIN share neither salt, nonce nor text', async () => {
  const shelf = refusing('throws');
  const keys = createKeys(shelf);
  await keys.createFor('noor', pin);
  await keys.createFor('petra', pin);
  const wrapped = async (id: string) => {
    const row = (await shelf.raw.get(id))?.value as { wrapped: Record<string, Uint8Array> };
    return ['salt', 'nonce', 'sealed'].map((part) => String(row.wrapped[part]));
  };
  const [one, other] = [await wrapped('person:noor'), await wrapped('person:petra')];
  for (const part of [0, 1, 2]) expect(one[part]).not.toBe(other[part]);
});

test('a browser that keeps CryptoKeys keeps them so', async () => {
  const { keys: shelf } = createMemoryStorage();
  const keys = createKeys(shelf);
  await keys.createFor('noor', pin);
  expect(await keys.keptAs()).toEqual({ ok: true, value: 'keys' });
  expect(holdsCryptoKey((await shelf.get('person:noor'))?.value)).toBe(true);
});

test('a full disk is not taken for a browser that refuses keys', async () => {
  const raw = createMemoryStorage().keys;
  let isFull = true;
  const keys = createKeys({
    ...raw,
    put: (row) =>
      isFull ? Promise.reject(createStorageProblem({ code: 'storage-full' })) : raw.put(row),
  });
  expect((await keys.createFor('noor', pin)).ok).toBe(false);
  isFull = false;
  expect((await keys.createFor('noor', pin)).ok).toBe(true);
  expect(await keys.keptAs()).toEqual({ ok: true, value: 'keys' });
});
