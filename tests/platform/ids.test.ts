/** Ids are random, and a device keeps its own. */

import { expect, test } from 'vitest';
import { deviceId, newId } from '../../src/platform/ids';

test('ids have 128 bits and do not meet', () => {
  const ids = Array.from({ length: 1000 }, newId);
  expect(new Set(ids).size).toBe(1000);
  expect(ids.every((id) => /^[0-9a-f]{32}$/.test(id))).toBe(true);
});

test('a device makes its id once, and keeps it', async () => {
  const rows = new Map<string, { value: unknown }>();
  const shelf = {
    get: async (id: string) => rows.get(id),
    put: async (row: { id: string; value: unknown }) => void rows.set(row.id, row),
  };
  const first = await deviceId(shelf);
  expect(await deviceId(shelf)).toBe(first);
  expect(rows.get('device-id')?.value).toBe(first);
});

test('a device whose storage fails still has an id, so that the app opens to say why', async () => {
  const failing = async () => Promise.reject(new Error('blocked'));
  expect(await deviceId({ get: failing, put: failing })).toMatch(/^[0-9a-f]{32}$/);
});
