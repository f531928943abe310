/** Seals and verifications per second, against the bare hash and the bare signature of the same bytes in the same run. */

import { sha256 } from '@noble/hashes/sha2.js';
import { canonicalJson, type Entry, seal, shopDigest, verifyLog } from '../../src/engine/integrity';
import { createSigningKey, signPayload, verifyJws } from '../../src/platform/signatures';
import { readGolden } from './golden-log';
import { medianOf } from './quantiles';

const rounds = 15;

const { entries } = readGolden('mountain-bike');
const contents = entries.map(({ id: _, ...content }: Entry) => content);
const bytes = contents.map((content) => new TextEncoder().encode(canonicalJson(content)));
const size = bytes.reduce((sum, { length }) => sum + length, 0) / bytes.length;
console.log(
  `${entries.length} entries of ${size.toFixed(0)} bytes each on average, Node ${process.versions.node}\n`,
);

const hashed = perSecond(() => bytes.map((each) => sha256(each)), bytes.length);
const sealed = perSecond(() => contents.map((content) => seal(content)), contents.length);
const verified = perSecond(() => verifyLog(entries), entries.length);
line('bare SHA-256 (synchronous)', hashed);
line('seal: canonical text, digest, shape, frozen', sealed, hashed);
line('verifyLog: shape, digest, graph, seal', verified, hashed);

const key = await createSigningKey();
const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, [
  'sign',
  'verify',
]);
const how = { name: 'ECDSA', hash: 'SHA-256' };
const payload = { job: 'j', frame: 'F', by: 'p', meaning: 'built', heads: [entries.at(-1)?.id] };
const message = new TextEncoder().encode(canonicalJson(payload));
const signature = await crypto.subtle.sign(how, pair.privateKey, message);
const jws = await signPayload(key, payload);

const bareSigned = await perSecondAsync(() => crypto.subtle.sign(how, pair.privateKey, message));
const bareVerified = await perSecondAsync(() =>
  crypto.subtle.verify(how, pair.publicKey, signature, message),
);
console.log('');
line('bare ECDSA P-256 signature', bareSigned);
line(
  'signature as JWS over canonical text',
  await perSecondAsync(() => signPayload(key, payload)),
  bareSigned,
);
line('bare ECDSA P-256 verification', bareVerified);
line(
  'verification of a JWS',
  await perSecondAsync(() => verifyJws(jws, [key.publicKey])),
  bareVerified,
);

const records = Array.from({ length: 1000 }, (_, n) => ({
  job: `job-${n}`,
  heads: [entries[n % entries.length]?.id ?? ''],
}));
console.log('');
line(
  'shop digests over 1,000 records',
  perSecond(() => shopDigest(records), 1),
);

function perSecond(work: () => unknown, times: number): number {
  const rates: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const began = performance.now();
    work();
    rates.push((times * 1000) / (performance.now() - began));
  }
  return medianOf(rates.slice(3));
}

async function perSecondAsync(work: () => Promise<unknown>): Promise<number> {
  const rates: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const began = performance.now();
    for (let n = 0; n < 200; n += 1) await work();
    rates.push(200_000 / (performance.now() - began));
  }
  return medianOf(rates.slice(3));
}

function line(what: string, rate: number, bare?: number): void {
  const ratio = bare === undefined ? '' : `  ${(bare / rate).toFixed(1)} times the bare one`;
  console.log(`${what.padEnd(44)} ${rate.toFixed(0).padStart(9)} a second${ratio}`);
}
