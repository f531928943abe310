/** Every importer fed with files that began well: bits turned, pieces cut and moved, values swapped, lists made long. */

import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import type { Zippable } from 'fflate';
import { type Entry, seal, verifyLog } from '../../src/engine/integrity';
import { readDeliveryList } from '../../src/exchange/delivery-list';
import { readCopy } from '../../src/exchange/read-copy';
import { textDigest } from '../../src/exchange/text-digest';
import { createKeys } from '../../src/platform/keys';
import { readCode } from '../../src/state/read-code';
import { fileWords } from '../../src/words/file-words';
import { bikeFrom, mountainBike } from './bikes';
import { bytesOf, type Members, membersOf, textOf, zipped } from './forged-file';
import { writeCopy } from './older-copy';
import { seededRandom } from './seeded-random';
import { createTablet, recordFiles } from './tablets';

export interface FuzzCount {
  readonly cases: number;
  /** Answers by code; `read` where a file was still good. */
  readonly answers: ReadonlyMap<string, number>;
}

type Dice = () => number;
type Answered = { readonly ok: boolean; readonly refusal?: { readonly code: string } };

interface Importer {
  readonly name: string;
  attempt(dice: Dice): Promise<Answered>;
}

/** Throws, with what is needed to see it again, at the first case that is not answered as it must be. */
export async function fuzzImporters(seed: number, cases: number): Promise<FuzzCount> {
  const importers = await goodBeginnings();
  const answers = new Map<string, number>();
  for (let n = 0; n < cases; n += 1) {
    const importer = importers[n % importers.length];
    if (importer === undefined) throw new Error('there are importers');
    const place = `${importer.name}, seed ${seed}, case ${n}`;
    const answer = await attempted(importer, seededRandom(seed * 1_000_003 + n), place);
    const code = answer.ok ? 'read' : (answer.refusal?.code ?? '');
    if (
      code !== 'read' &&
      fileWords.refusal({ ...answer.refusal, code }).includes('could not be done')
    )
      throw new Error(`no words for ${code}: ${place}`);
    const key = `${importer.name}: ${code}`;
    answers.set(key, (answers.get(key) ?? 0) + 1);
  }
  return { cases, answers };
}

async function attempted(importer: Importer, dice: Dice, place: string): Promise<Answered> {
  try {
    return await importer.attempt(dice);
  } catch (error) {
    throw new Error(`${place}: ${error instanceof Error ? error.stack : String(error)}`);
  }
}

async function goodBeginnings(): Promise<readonly Importer[]> {
  const tablet = createTablet('tablet-a');
  const noor = { id: 'noor', roles: ['mechanic'] } as const;
  const bike = bikeFrom(mountainBike);
  await tablet.perform('job-1', { kind: 'receive-box', bike }, noor);
  await tablet.perform('job-2', { kind: 'receive-box', bike }, noor);
  await tablet.perform('job-2', { kind: 'set-due', due: '2026-12-01T10:00' }, noor);
  const file = await tablet.write();
  const packed = new Uint8Array(await file.arrayBuffer());
  const members = await membersOf(file);
  const copy = writeCopy({ holdings: await tablet.storage.holdings(), publicKeys: [], at: '' });
  const keys = createKeys(tablet.storage.keys);
  const signed = await keys.signAsDevice({
    job: 'job-1',
    frame: 'F1',
    head: 'a'.repeat(64),
    on: '2026-11-25',
  });
  const code = signed.ok ? signed.value : '';
  const read = await readCode(keys, code);
  const said = read.ok ? read.value : undefined;
  return [
    {
      name: 'record file, bytes',
      attempt: (dice) => openedWhole(new Blob([new Uint8Array(withBytesChanged(packed, dice))])),
    },
    {
      name: 'record file, members',
      attempt: (dice) => openedWhole(zipped(withMembersChanged(members, dice))),
    },
    {
      name: 'copy',
      attempt: async (dice) =>
        readCopy(dice() < 0.5 ? withTextChanged(copy, dice) : withJsonChanged(copy, dice)),
    },
    {
      name: 'delivery list',
      attempt: async (dice) => {
        const read = readDeliveryList(withTextChanged(deliveryList, dice), {
          knownFrameNumbers: new Set(),
          today: '2026-11-25',
        });
        const [first] = read.ok ? read.value.refused : [];
        return first === undefined ? read : { ok: false, refusal: first };
      },
    },
    {
      name: 'code',
      attempt: async (dice) => {
        const read = await readCode(keys, withTextChanged(code, dice));
        // Two texts may be the same signature; what it says may not change under it.
        if (read.ok && read.value.isSignedHere && !isDeepStrictEqual(read.value, said))
          throw new Error('a changed code passed for a signed one');
        return read;
      },
    },
  ];
}

/** Opened, every record read, and what is still good taken in: afterwards every held log is whole. */
async function openedWhole(file: Blob): Promise<Answered> {
  const opened = await recordFiles.open(file);
  if (!opened.ok) return opened;
  const tablet = createTablet('tablet-b');
  const { refused } = await tablet.takeIn(file);
  for (const { job, heads } of await tablet.storage.rows()) {
    const { entries } = await tablet.storage.log(job);
    if (!verifyLog(entries, { job, heads }).ok) throw new Error(`${job} was kept damaged`);
  }
  const kept = (await tablet.storage.holdings()).entries;
  for (const { job } of refused)
    if (kept.some((entry) => entry.job === job)) throw new Error(`${job} was kept in part`);
  return refused[0] ? { ok: false, refusal: refused[0].refusal } : { ok: true };
}

const deliveryList = readFileSync(
  new URL('../../public/demo/delivery-list.csv', import.meta.url),
  'utf8',
);

const bites = [
  '"',
  ',',
  ';',
  '\n',
  '\u0000',
  '\ud800',
  '=1+1',
  '<script>alert(1)</script>',
  '../../etc/passwd',
  '__proto__',
  '9'.repeat(400),
  '[['.repeat(300),
  '‮',
  'e'.repeat(5000),
];

function pick<T>(items: readonly T[], dice: Dice): T {
  const item = items[Math.floor(dice() * items.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
}

function withBytesChanged(bytes: Uint8Array, dice: Dice): Uint8Array {
  const at = Math.floor(dice() * bytes.length);
  const length = 1 + Math.floor(dice() * 40);
  const way = dice();
  if (way < 0.5) {
    const changed = Uint8Array.from(bytes);
    for (let n = 0; n <= dice() * 3; n += 1)
      changed[Math.floor(dice() * bytes.length)] = Math.floor(dice() * 256);
    return changed;
  }
  if (way < 0.65) return bytes.slice(0, at);
  if (way < 0.8) return joined(bytes.slice(0, at), bytes.slice(at + length));
  if (way < 0.9) return joined(bytes.slice(0, at), bytes.slice(at - length), bytes.slice(at));
  // The directory at the end is where a ZIP can be made to lie.
  const changed = Uint8Array.from(bytes);
  const tail = bytes.length - 1 - Math.floor(dice() * 400);
  changed[Math.max(0, tail)] = Math.floor(dice() * 256);
  return changed;
}

function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(pieces.flatMap((piece) => [...piece]));
}

function withTextChanged(text: string, dice: Dice): string {
  let changed = text;
  for (let n = 0; n <= dice() * 3; n += 1) {
    const at = Math.floor(dice() * changed.length);
    const cut = Math.floor(dice() * 12);
    const put =
      dice() < 0.5 ? pick(bites, dice) : String.fromCharCode(32 + Math.floor(dice() * 95));
    changed = changed.slice(0, at) + (dice() < 0.8 ? put : '') + changed.slice(at + cut);
  }
  return changed;
}

/** One value somewhere inside becomes another: of another type, too long, too deep, or one from elsewhere. */
function withJsonChanged(text: string, dice: Dice): string {
  const root: unknown = JSON.parse(text);
  let holder: unknown = root;
  for (let depth = 0; depth < 12; depth += 1) {
    if (typeof holder !== 'object' || holder === null) break;
    const names = Object.keys(holder);
    if (names.length === 0) break;
    const name = pick(names, dice);
    const record = holder as Record<string, unknown>; // an object or a list, reached into by name
    const inner = record[name];
    if (typeof inner === 'object' && inner !== null && dice() < 0.85) {
      holder = inner;
      continue;
    }
    if (dice() < 0.15) delete record[name];
    else record[name] = otherValue(inner, dice);
    break;
  }
  return JSON.stringify(root);
}

function otherValue(value: unknown, dice: Dice): unknown {
  const others = [
    null,
    true,
    -1,
    0.1,
    1e308,
    '',
    [],
    {},
    [value],
    { value },
    pick(bites, dice),
    typeof value === 'string' ? `${value}x` : 'x',
    typeof value === 'number' ? value + 1 : 7,
    Array.from({ length: 300 }, () => value),
    'f'.repeat(64),
  ];
  return pick(others, dice);
}

/** Half of them are put together again so that every digest of the file fits, and only the content is wrong. */
function withMembersChanged(members: Members, dice: Dice): Zippable {
  const changed: Members = { ...members };
  const paths = Object.keys(members);
  const way = dice();
  if (way < 0.1) changed[pick(['../x.json', 'a.json', 'logs/x.jsonl', 'x'], dice)] = bytesOf('{}');
  else if (way < 0.2) delete changed[pick(paths, dice)];
  else if (way < 0.4) {
    const path = pick(paths, dice);
    changed[path] = bytesOf(withTextChanged(textOf(members[path]), dice));
  } else if (way < 0.6) {
    changed['manifest.json'] = bytesOf(withJsonChanged(textOf(members['manifest.json']), dice));
  } else return withLogChanged(changed, dice);
  return changed;
}

function withLogChanged(members: Members, dice: Dice): Members {
  const manifest = JSON.parse(textOf(members['manifest.json']));
  const record = pick<{ log: string; entries: number }>(manifest.records, dice);
  const path = `logs/${record.log}.jsonl`;
  const lines = textOf(members[path]).trimEnd().split('\n');
  const at = Math.floor(dice() * lines.length);
  const line = lines[at] ?? '';
  const way = dice();
  if (way < 0.5) lines[at] = resealed(withJsonChanged(line, dice), dice);
  else if (way < 0.65) lines.splice(at, 1);
  else if (way < 0.8) lines.splice(at, 0, line);
  else lines.reverse();
  const log = `${lines.join('\n')}\n`;
  delete members[path];
  record.log = textDigest(log);
  if (dice() < 0.8) record.entries = lines.length;
  members[`logs/${record.log}.jsonl`] = bytesOf(log);
  members['manifest.json'] = bytesOf(JSON.stringify(manifest));
  return members;
}

/** Sometimes with an id that fits the forged content, as somebody who knows the rules would do it. */
function resealed(line: string, dice: Dice): string {
  if (dice() < 0.5) return line;
  try {
    const { id: _, ...rest } = JSON.parse(line) as Entry;
    return JSON.stringify(seal(rest));
  } catch {
    return line; // what cannot be sealed stays as it is
  }
}
