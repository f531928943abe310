/** Keys: a person signs with a PIN, the device by itself, and what was signed stays good for ever. */

import { describe, expect, test } from 'vitest';
import type { KeyShelf } from '../../src/platform/key-shelf';
import { createKeys } from '../../src/platform/keys';

function shelfInMemory(): KeyShelf & {
  readonly rows: Map<string, { id: string; value: unknown }>;
} {
  const rows = new Map<string, { id: string; value: unknown }>();
  return {
    rows,
    get: async (id) => rows.get(id),
    async put(row) {
      rows.set(row.id, row);
    },
    async change(id, work) {
      rows.set(id, work(rows.get(id)));
    },
  };
}

async function signedBy(keys: ReturnType<typeof createKeys>, person: string, pin: string) {
  const signed = await keys.signAs(person, pin, { job: 'j', heads: ['h'] });
  if (!signed.ok) throw new Error(signed.refusal.code);
  return signed.value;
}

describe('a person’s key', () => {
  test('signs with the right PIN, and the signature gives its payload back', async () => {
    const keys = createKeys(shelfInMemory());
    await keys.createFor('noor', '274913');
    const jws = await signedBy(keys, 'noor', '274913');
    expect(await keys.verify(jws, 'noor')).toEqual({ ok: true, value: { job: 'j', heads: ['h'] } });
  });

  // RFC 7515: three base64url parts; RFC 7518, 3.4: ES256 signatures are 64 bytes.
  test('makes a compact JWS with ES256', async () => {
    const keys = createKeys(shelfInMemory());
    await keys.createFor('noor', '274913');
    const [header = '', , signature = ''] = (await signedBy(keys, 'noor', '274913')).split('.');
    expect(JSON.parse(Buffer.from(header, 'base64url').toString())).toMatchObject({ alg: 'ES256' });
    expect(Buffer.from(signature, 'base64url')).toHaveLength(64);
  });

  test('refuses a wrong PIN, and a person it does not know', async () => {
    const keys = createKeys(shelfInMemory());
    await keys.createFor('noor', '274913');
    const wrong = await keys.signAs('noor', '274914', {});
    expect(wrong).toEqual({ ok: false, refusal: { code: 'pin-wrong' } });
    const stranger = await keys.signAs('nobody', '274913', {});
    expect(stranger).toMatchObject({ ok: false, refusal: { code: 'keys-unavailable' } });
  });

  test('does not answer for somebody else, nor for a changed payload', async () => {
    const keys = createKeys(shelfInMemory());
    await keys.createFor('noor', '274913');
    await keys.createFor('petra', '917582');
    const jws = await signedBy(keys, 'noor', '274913');
    expect(await keys.verify(jws, 'petra')).toEqual({
      ok: false,
      refusal: { code: 'signature-wrong' },
    });
    const [header, , signature] = jws.split('.');
    const other = Buffer.from('{"job":"k"}').toString('base64url');
    expect((await keys.verify([header, other, signature].join('.'), 'noor')).ok).toBe(false);
  });

  test('stays good after a new PIN, and the old PIN does not', async () => {
    const keys = createKeys(shelfInMemory());
    await keys.createFor('noor', '274913');
    const before = await signedBy(keys, 'noor', '274913');
    await keys.createFor('noor', '508236');
    expect((await keys.verify(before, 'noor')).ok).toBe(true);
    expect((await keys.verify(await signedBy(keys, 'noor', '508236'), 'noor')).ok).toBe(true);
    expect((await keys.signAs('noor', '274913', {})).ok).toBe(false);
  });

  test('cannot be read out, and the PIN is nowhere', async () => {
    const shelf = shelfInMemory();
    await createKeys(shelf).createFor('noor', '274913');
    const kept = shelf.rows.get('person:noor')?.value as { signing: { privateKey: CryptoKey } };
    expect(kept.signing.privateKey.extractable).toBe(false);
    const device = shelf.rows.get('device')?.value as { pinKey: CryptoKey };
    expect(device.pinKey.extractable).toBe(false);
    expect(JSON.stringify([...shelf.rows.values()])).not.toContain('274913');
  });
});

describe('the device’s key', () => {
  test('signs without a PIN, and is made once however many ask at once', async () => {
    const shelf = shelfInMemory();
    const keys = createKeys(shelf);
    const all = await Promise.all([1, 2, 3].map((n) => keys.signAsDevice({ n })));
    for (const signed of all) {
      expect(signed.ok && (await keys.verify(signed.value)).ok).toBe(true);
    }
    const again = await createKeys(shelf).signAsDevice({ n: 4 });
    expect(again.ok && (await keys.verify(again.value)).ok).toBe(true);
  });
});

describe('a browser that keeps nothing', () => {
  test('is named, whether it throws or gives nothing back', async () => {
    const throwing: KeyShelf = {
      get: async () => undefined,
      put: async () => {
        throw new DOMException('no room for anything', 'UnknownError');
      },
      change: async () => undefined,
    };
    const nothing = async () => undefined;
    const forgetful: KeyShelf = { get: nothing, put: nothing, change: nothing };
    for (const shelf of [throwing, forgetful]) {
      const made = await createKeys(shelf).createFor('noor', '274913');
      expect(made).toMatchObject({ ok: false, refusal: { code: 'keys-unavailable' } });
    }
  });
});
