/** A record file carries all that belongs to its records and no secret, and goes back in as it came out. */

import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { digestOfBytes } from '../../src/engine/integrity';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

let demo: TestApp;
let backup: Blob;

beforeAll(async () => {
  demo = createTestApp();
  must(await demo.app.openDemoShop());
  await settled();
  must(await demo.app.saveBackup('download'));
  backup = demo.saved[0]?.content ?? new Blob();
}, 30_000); // a whole demo, perhaps beside other tests

async function membersOf(file: Blob): Promise<Map<string, string>> {
  const members = unzipSync(new Uint8Array(await file.arrayBuffer()));
  return new Map(
    Object.entries(members).map(([path, bytes]) => [path, Buffer.from(bytes).toString('utf8')]),
  );
}

describe('a backup', () => {
  test('is a ZIP named after the day, readable by any other program', async () => {
    expect(demo.saved[0]?.name).toBe('standbook-backup-2026-11-25.zip');
    const members = await membersOf(backup);
    for (const path of ['README.txt', 'index.csv', 'people.json', 'shop.json', 'manifest.json'])
      expect(members.get(path), path).toBeTruthy();
    const rows = demo.app.rack.getState().rows;
    expect(members.get('index.csv')?.split('\r\n')).toHaveLength(rows.length + 2);
    for (const { frameNumber } of rows) expect(members.get('index.csv')).toContain(frameNumber);
  });

  test('names its members after their content (FIPS 180-4)', async () => {
    const members = unzipSync(new Uint8Array(await backup.arrayBuffer()));
    const named = Object.entries(members).filter(([path]) => path.includes('/'));
    expect(named.length).toBeGreaterThan(15);
    for (const [path, bytes] of named) expect(path).toContain(`/${digestOfBytes(bytes)}.`);
  });

  test('holds no PIN and no private key', async () => {
    const pins = demo.app.people.getState().rows.map(({ demoPin }) => demoPin ?? '');
    expect(pins).toHaveLength(4);
    const all = [...(await membersOf(backup)).values()].join('\n');
    for (const pin of pins) expect(all).not.toContain(`"${pin}"`);
    expect(all).not.toMatch(/verifier|privateKey|"d":|demoPin|device-id/);
  });

  test('written again at the same time is the same file, byte for byte', async () => {
    must(await demo.app.saveBackup('download'));
    const [one, two] = await Promise.all(
      demo.saved
        .slice(0, 2)
        .map(async ({ content }) => new Uint8Array(await content.arrayBuffer())),
    );
    expect(digestOfBytes(one ?? new Uint8Array())).toBe(digestOfBytes(two ?? new Uint8Array([1])));
  });

  test('goes into a fresh tablet with the same heads, photos and customers, and its signatures still hold', async () => {
    const fresh = createTestApp({ device: 'tablet-b' });
    const looked = must(await fresh.app.lookAtFile(backup));
    expect(looked.refused).toEqual([]);
    expect(looked.newSigners.filter(Boolean).sort()).toEqual(
      demo.app.people
        .getState()
        .rows.map(({ name }) => name)
        .sort(),
    );
    const taken = must(await fresh.app.restoreBackup(looked));
    await settled();
    const rows = demo.app.rack.getState().rows;
    expect(taken).toMatchObject({ fresh: rows.length, grown: 0, known: 0, refused: [] });
    expect(fresh.app.rack.getState().rows).toEqual(rows);
    for (const { job } of rows.filter(({ status }) => status === 'handed-over')) {
      const findings = (await fresh.app.checkSignatures(job)).map(({ finding }) => finding);
      expect(findings).toEqual(['good', 'good', 'good']);
      expect((await fresh.app.checkLog(job)).ok).toBe(true);
    }
    const [before, after] = await Promise.all([demo.storage.holdings(), fresh.storage.holdings()]);
    const byDigest = (rows: readonly { readonly digest: string }[]) =>
      [...rows].sort((a, b) => (a.digest < b.digest ? -1 : 1));
    expect(byDigest(after.customers)).toEqual(byDigest(before.customers));
    expect(byDigest(after.blobs)).toEqual(byDigest(before.blobs));
    expect(byDigest(after.plans)).toEqual(byDigest(before.plans));
    expect(after.tools).toEqual(before.tools);
    expect(after.figures).toEqual(before.figures);
    expect(after.people).toEqual(before.people.map(({ demoPin: _, ...person }) => person));
    expect(fresh.app.shop.getState()).toMatchObject({ name: demo.app.shop.getState().name });
  });
});
