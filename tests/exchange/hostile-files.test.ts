/** Files that lie, burst, climb or bite: each is refused in words that say why, and nothing of it is kept. */

import { zipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  digestOf,
  digestOfBytes,
  type Entry,
  logEnd,
  nextPlace,
  seal,
} from '../../src/engine/integrity';
import { openBundle } from '../../src/exchange/open-bundle';
import { fileWords } from '../../src/words/file-words';
import { bikeFrom, mountainBike } from '../support/bikes';
import {
  bytesOf,
  fileAround,
  membersOf,
  reworked,
  textOf,
  withManifest,
  withPart,
  zipped,
} from '../support/forged-file';
import { seededRandom } from '../support/seeded-random';
import { createTablet, heldBy, recordFiles } from '../support/tablets';
import { unsealed } from '../support/written-log';

const seed = 20261125;
/** Milliseconds: hundreds of files are opened and taken in. */
const patience = 60_000;
const noor = { id: 'noor', roles: ['mechanic'] } as const;
const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3);
const bike = bikeFrom(mountainBike);

let good: Blob;

beforeAll(async () => {
  const tablet = createTablet('tablet-a');
  const blob = { digest: digestOfBytes(jpeg), type: 'image/jpeg', bytes: jpeg };
  const box = { kind: 'receive-box', bike, photos: [blob.digest] } as const;
  await tablet.perform('job-1', box, noor, { blobs: [blob] });
  await tablet.perform('job-1', { kind: 'set-due', due: '2026-12-01T10:00' }, noor);
  await tablet.perform('job-2', { kind: 'receive-box', bike }, noor);
  good = await tablet.write();
});

/** What is refused: of the file, or of each record in it. Afterwards a tablet that took in the rest holds nothing else. */
async function refusalsOf(file: Blob): Promise<readonly { readonly code: string }[]> {
  const opened = await recordFiles.open(file);
  if (!opened.ok) return [opened.refusal];
  const tablet = createTablet('tablet-b');
  const { refused } = await tablet.takeIn(file);
  const held = await tablet.storage.holdings();
  for (const { job } of refused) {
    expect(held.entries.filter((entry) => entry.job === job)).toEqual([]);
    expect(held.rows.filter((row) => row.job === job)).toEqual([]);
  }
  return refused.map(({ refusal }) => refusal);
}

async function expectRefused(file: Blob, expected: object): Promise<void> {
  const refusals = await refusalsOf(file);
  expect(refusals).not.toEqual([]);
  expect(refusals[0]).toMatchObject(expected);
  for (const refusal of refusals) {
    const sentence = fileWords.refusal({ ...refusal });
    expect(sentence).not.toContain('could not be done');
    expect(sentence).not.toMatch(/undefined|\[object/);
  }
}

test('the good file is good', async () => {
  expect(await refusalsOf(good)).toEqual([]);
});

describe('what is no record file', () => {
  test.each<[string, Blob, string]>([
    ['nothing', new Blob([]), 'file-not-a-record-file'],
    ['a text', new Blob(['Dear shop, here are the records.']), 'file-not-a-record-file'],
    ['a picture', new Blob([jpeg]), 'file-not-a-record-file'],
    ['another ZIP', zipped({ 'letter.txt': bytesOf('hello') }), 'file-not-a-record-file'],
    ['an empty ZIP', zipped({}), 'file-not-a-record-file'],
    [
      'a manifest that is a list',
      zipped({ 'manifest.json': bytesOf('[]') }),
      'file-not-a-record-file',
    ],
    [
      'a manifest of something else',
      zipped({ 'manifest.json': bytesOf('{"format":"x","version":1}') }),
      'file-not-a-record-file',
    ],
  ])('%s', async (_, file, code) => {
    await expectRefused(file, { code });
  });

  test('two hundred megabytes of it, of which hardly anything is read', async () => {
    let read = 0;
    const size = 200 * 2 ** 20;
    const opened = await openBundle({
      size,
      slice: (from = 0, to = size) => {
        read += to - from;
        return new Blob([new Uint8Array(to - from)]);
      },
    });
    expect(opened).toEqual({ ok: false, refusal: { code: 'file-not-a-record-file' } });
    expect(read).toBeLessThan(1024);
  });
});

describe('a file that was hurt on its way', () => {
  test(
    'cut anywhere',
    async () => {
      for (let size = 1; size < good.size; size += Math.ceil(good.size / 150))
        await expectRefused(good.slice(0, size), {
          code: expect.stringMatching(/file-(cut-short|not-a-record-file)/),
        });
      await expectRefused(new Blob([good, 'x']), { code: 'file-cut-short' });
    },
    patience,
  );

  test(
    `one bit turned over anywhere: refused, or it meant nothing (seed ${seed})`,
    async () => {
      const random = seededRandom(seed);
      const bytes = new Uint8Array(await good.arrayBuffer());
      const whole = createTablet('tablet-b');
      await whole.takeIn(good);
      const expected = await heldBy(whole);
      let harmless = 0;
      for (let flips = 0; flips < 400; flips += 1) {
        const changed = Uint8Array.from(bytes);
        const at = Math.floor(random() * bytes.length);
        changed[at] = (changed[at] ?? 0) ^ (1 << Math.floor(random() * 8));
        const file = new Blob([changed]);
        if ((await refusalsOf(file)).length > 0) continue;
        // Dates and other marks in the ZIP's own headers say nothing about records.
        const tablet = createTablet('tablet-b');
        await tablet.takeIn(file);
        expect(await heldBy(tablet), `byte ${at}`).toEqual(expected);
        harmless += 1;
      }
      expect(harmless).toBeLessThan(80);
    },
    patience,
  );
});

describe('a file that bursts', () => {
  test(
    'twenty megabytes of noughts in a few bytes',
    async () => {
      const bomb = zipped({ 'manifest.json': new Uint8Array(20 * 2 ** 20) });
      expect(bomb.size).toBeLessThan(60_000);
      await expectRefused(bomb, { code: 'file-swollen' });
    },
    patience,
  );

  test(
    'one that tells less than it holds',
    async () => {
      const zip = zipSync({ 'manifest.json': new Uint8Array(2 * 2 ** 20) });
      const view = new DataView(zip.buffer);
      const end = zip.length - 22;
      view.setUint32(view.getUint32(end + 16, true) + 24, 4096, true); // the size it claims
      await expectRefused(new Blob([zip]), { code: 'file-member-damaged' });
    },
    patience,
  );

  test(
    'one packed piece under many names',
    async () => {
      const one = zipSync({ 'a.json': bytesOf('{}'.repeat(500)) }, { level: 9 });
      const end = one.length - 22;
      const view = new DataView(one.buffer);
      const directory = one.slice(view.getUint32(end + 16, true), end);
      const again = Uint8Array.from(directory);
      again[46] = 'b'.charCodeAt(0);
      const tail = Uint8Array.from(one.slice(end));
      const told = new DataView(tail.buffer);
      told.setUint16(8, 2, true);
      told.setUint16(10, 2, true);
      told.setUint32(12, 2 * directory.length, true);
      await expectRefused(new Blob([one.slice(0, end), again, tail]), {
        code: 'file-members-overlap',
      });
    },
    patience,
  );

  test(
    'a part larger than any part can be',
    async () => {
      const noise = new Uint8Array(33 * 2 ** 20);
      const stored = zipSync({ 'manifest.json': [noise, { level: 0 }] });
      await expectRefused(new Blob([new Uint8Array(stored)]), { code: 'file-member-too-large' });
    },
    patience,
  );
});

describe('a file that climbs', () => {
  test.each([
    '../manifest.json',
    '/etc/passwd.txt',
    'logs/../../x.json',
    'C:/x.json',
    'logs\\x.json',
    'a/b/c.json',
    'logs/',
    '.hidden.json',
    'logs/con.json\u0000.txt',
    'ｌogs/x.json',
    'logs/%2e%2e.json',
  ])('out of its folder by %j', async (path) => {
    const members = { ...(await membersOf(good)), [path]: bytesOf('{}') };
    await expectRefused(zipped(members), { code: 'file-path-forbidden' });
  });
});

describe('a file whose list and contents disagree', () => {
  test.each<[string, () => Promise<Blob>, object]>([
    [
      'a member that nobody names',
      () => reworked(good, (members) => Object.assign(members, { 'extra.json': bytesOf('{}') })),
      { code: 'file-member-unnamed', path: 'extra.json' },
    ],
    [
      'a member that is not there',
      () => reworked(good, (members) => void delete members['people.json']),
      { code: 'file-member-missing', path: 'people.json' },
    ],
    [
      'people who were changed',
      () =>
        reworked(good, (members) => {
          members['people.json'] = bytesOf(`${textOf(members['people.json'])} `);
        }),
      { code: 'file-member-changed', path: 'people.json' },
    ],
    [
      'people who are none',
      () => withPart(good, 'people.json', '{"people":[{"id":7}],"publicKeys":[]}'),
      { code: 'file-part-malformed', path: 'people.json' },
    ],
    [
      'a customer by another name',
      () =>
        withPart(
          good,
          'customers.json',
          JSON.stringify({
            erased: [],
            customers: [{ digest: 'c'.repeat(64), salt: 's', name: 'Somebody Else' }],
          }),
        ),
      { code: 'file-member-changed', path: 'customers.json' },
    ],
    [
      'a later version',
      () => withManifest(good, (manifest) => Object.assign(manifest, { version: 2 })),
      { code: 'file-of-another-version', version: 2 },
    ],
    [
      'a version that is a word',
      () => withManifest(good, (manifest) => Object.assign(manifest, { version: 'new' })),
      { code: 'file-not-a-record-file' },
    ],
    [
      'a record without heads',
      () => withManifest(good, ({ records }) => Object.assign(records[0] ?? {}, { heads: [] })),
      { code: 'file-manifest-malformed', place: 'records.0.heads' },
    ],
    [
      'one record twice',
      () => withManifest(good, ({ records }) => records.push(...records.slice(0, 1))),
      { code: 'file-record-twice', job: 'job-1' },
    ],
    [
      'a digest that no proof leads to',
      () => withManifest(good, ({ digest }) => Object.assign(digest, { root: 'a'.repeat(64) })),
      { code: 'file-proof-wrong', job: 'job-1' },
    ],
    [
      'a picture that runs, by its type',
      () =>
        withManifest(good, ({ records }) =>
          Object.assign(records[0]?.pictures[0] ?? {}, { type: 'text/html' }),
        ),
      { code: 'file-manifest-malformed' },
    ],
  ])('%s', async (_, file, expected) => {
    await expectRefused(await file(), expected);
  });
});

const received = { kind: 'box-received', v: 1, bike, photos: [] };
const root = seal(unsealed({ event: received }));

function next(seen: readonly Entry[], event: Entry['event'], device = 'tablet-a'): Entry {
  return seal(unsealed({ ...nextPlace(logEnd(seen, device)), device, event }));
}

const damaged = (code: string) => ({ code: 'record-log-damaged', damage: { code } });

describe('a record that is not true, in a file that is well made', () => {
  const drawn = (svg: string) => {
    const bytes = bytesOf(svg);
    const digest = digestOfBytes(bytes);
    const event = { ...received, photos: [digest] };
    const entry = seal(unsealed({ event }));
    return fileAround(
      { 'job-1': { entries: [entry] } },
      { [digest]: { type: 'image/svg+xml', bytes } },
    );
  };
  const later = (changes: Parameters<typeof unsealed>[0]) =>
    seal(unsealed({ seq: 2, lamport: 2, parents: [root.id], ...changes }));
  const of = (...entries: unknown[]) =>
    fileAround({ 'job-1': { entries: entries as readonly Entry[] } }); // forged on purpose

  test.each<[string, () => Promise<Blob>, object]>([
    ['a forged id', () => of({ ...root, id: 'f'.repeat(64) }), damaged('entry-changed')],
    [
      'entries that are each other’s parents',
      () => {
        const [a, b] = ['a'.repeat(64), 'b'.repeat(64)];
        return of(
          { ...later({ parents: [b] }), id: a, lamport: 1, seq: 1 },
          { ...later({ parents: [a] }), id: b },
          { ...later({ seq: 3, lamport: 3, parents: [a] }), id: 'c'.repeat(64) },
        );
      },
      damaged('entry-changed'),
    ],
    [
      'an entry that is its own parent',
      () => of(root, { ...later({}), parents: [later({}).id] }),
      {},
    ],
    [
      'a lost entry',
      () =>
        of(
          root,
          next([root, next([root], { kind: 'job-resumed', v: 1 })], { kind: 'job-resumed', v: 1 }),
        ),
      damaged('entry-missing'),
    ],
    ['a jump in time', () => of(root, later({ lamport: 9 })), damaged('lamport-wrong')],
    [
      'another job’s entry',
      () => of(root, later({ job: 'job-9' })),
      damaged('entry-of-another-job'),
    ],
    [
      'two histories of one tablet',
      () =>
        of(
          root,
          later({ event: { kind: 'job-resumed', v: 1 } }),
          later({ event: { kind: 'due-set', v: 1 } }),
        ),
      damaged('seq-forked'),
    ],
    [
      'work after the hand-over',
      () => {
        const handed = later({
          event: {
            kind: 'handed-over',
            v: 1,
            customer: 'd'.repeat(64),
            told: [],
            firstCheck: '2027-01-01',
            frontBrakeLever: 'right',
          } as Entry['event'],
        });
        return of(root, handed, next([root, handed], { kind: 'job-resumed', v: 1 }));
      },
      damaged('entry-after-seal'),
    ],
    [
      'an event that no app writes',
      () =>
        of(
          seal(unsealed({ event: { ...received, bike: { kind: 'unicycle' } } as Entry['event'] })),
        ),
      { code: 'record-event-malformed' },
    ],
    [
      'no box at all',
      () => of(seal(unsealed({ event: { kind: 'due-set', v: 1 } }))),
      { code: 'record-without-a-bike' },
    ],
    [
      'a plan that is not there',
      () =>
        of(
          root,
          next([root], {
            kind: 'job-opened',
            v: 1,
            plan: 'e'.repeat(64),
            market: 'gb',
          } as Entry['event']),
        ),
      { code: 'record-plan-missing' },
    ],
    [
      'a plan that is none',
      () => {
        const plan = { market: 'gb' };
        const opened = { kind: 'job-opened', v: 1, plan: digestOf(plan), market: 'gb' };
        return fileAround({
          'job-1': { entries: [root, next([root], opened)], plan: plan as never }, // forged on purpose
        });
      },
      { code: 'record-part-changed' },
    ],
    [
      'more tablets than a shop can have',
      () => {
        const log: Entry[] = [root];
        for (let n = 0; n < 120; n += 1)
          log.push(next(log, { kind: 'job-resumed', v: 1 }, `tablet-${n}`));
        return of(...log);
      },
      { code: 'record-too-long' },
    ],
    [
      'a script among the strokes',
      () => drawn('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
      { code: 'record-picture-forbidden' },
    ],
    [
      'strokes that act when touched',
      () => drawn('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'),
      { code: 'record-picture-forbidden' },
    ],
    [
      'strokes that fetch',
      () =>
        drawn(
          '<svg xmlns="http://www.w3.org/2000/svg"><image href="https://example.com/x"/></svg>',
        ),
      { code: 'record-picture-forbidden' },
    ],
    [
      'strokes with entities of their own',
      () => drawn('<!DOCTYPE svg [<!ENTITY a "aaaa">]><svg>&a;</svg>'),
      { code: 'record-picture-forbidden' },
    ],
    [
      'a page that calls itself strokes',
      () => drawn('<html><body>hello</body></html>'),
      { code: 'record-picture-forbidden' },
    ],
  ])('%s', async (_, file, expected) => {
    await expectRefused(await file(), expected);
  });

  test('lines without end, nested without end, and twenty thousand of them', async () => {
    const deep = `${'['.repeat(200_000)}\n`;
    const many = `${'{}\n'.repeat(20_001)}`;
    for (const [log, count] of [
      [deep, 1],
      [many, 20_001],
      ['no end of line', 1],
      ['7\n[]\nnull\n{}\n', 4],
    ] as const) {
      const file = await fileAround({ 'job-1': { entries: [root] } });
      const sha256 = digestOfBytes(bytesOf(log));
      const forged = await reworked(file, (members) => {
        const manifest = JSON.parse(textOf(members['manifest.json']));
        delete members[`logs/${manifest.records[0].log}.jsonl`];
        members[`logs/${sha256}.jsonl`] = bytesOf(log);
        Object.assign(manifest.records[0], { log: sha256, entries: count });
        members['manifest.json'] = bytesOf(JSON.stringify(manifest));
      });
      const refusals = await refusalsOf(forged);
      expect(refusals).toHaveLength(1);
      expect(refusals[0]?.code).toMatch(/^(record|file)-/);
    }
  });

  test('does not stop the good records beside it', async () => {
    const file = await fileAround({
      'job-1': { entries: [root, { ...later({}), by: 'x' } as Entry] },
      'job-2': { entries: [seal(unsealed({ job: 'job-2', event: received }))] },
    });
    const tablet = createTablet('tablet-b');
    const taken = await tablet.takeIn(file);
    expect(taken).toMatchObject({ fresh: 1, refused: [{ job: 'job-1' }] });
    expect((await tablet.storage.rows()).map(({ job }) => job)).toEqual(['job-2']);
  });
});

describe('what is only text stays text', () => {
  const bite = '<img src=x onerror=alert(1)><script>alert(1)</script>';

  test('scripts in every text field come in as the letters they are', async () => {
    const bitten = {
      ...bike,
      make: bite,
      model: bite,
      frameNumber: bike.frameNumber,
      colour: bite,
    };
    const event = { ...received, bike: bitten, cartonDamage: bite, delivery: bite };
    const tablet = createTablet('tablet-b');
    await tablet.takeIn(
      await fileAround({ 'job-1': { entries: [seal(unsealed({ event, by: bite }))] } }),
    );
    expect(await tablet.storage.row('job-1')).toMatchObject({ make: bite, colour: bite });
  });

  test('formulas in the index are shown and never run', async () => {
    const formula = '=HYPERLINK("http://example.com","x")';
    const event = { ...received, bike: { ...bike, make: formula, model: '@SUM(1)' } };
    const file = await fileAround({ 'job-1': { entries: [seal(unsealed({ event }))] } });
    const index = textOf((await membersOf(file))['index.csv']);
    expect(index).toContain(`"'=HYPERLINK(""http://example.com"",""x"")"`);
    expect(index).toContain(",'@SUM(1),");
  });
});
