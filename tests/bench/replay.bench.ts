/** How long a job of 300 entries takes to read: folded from scratch, by one more entry, and verified. */

import {
  type Entry,
  logEnd,
  nextPlace,
  orderLog,
  seal,
  verifyLog,
} from '../../src/engine/integrity';
import { evolve, replay } from '../../src/engine/job';
import { readGolden } from './golden-log';
import { said } from './quantiles';

const size = 300;
const runs = 200;
const warmUp = 30;

const { plan, entries: golden } = readGolden('mountain-bike');
const entries = grown(golden, size);
const [last] = entries.slice(-1);
if (last === undefined) throw new Error('a golden log has entries');
const before = replay(entries.slice(0, -1), plan);
const shuffled = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));

console.log(`${entries.length} entries of a mountain bike's job, in Node ${process.versions.node}`);
console.log(
  said(
    'replay from scratch (order and fold)',
    timed(() => replay(entries, plan)),
  ),
);
console.log(
  said(
    'replay from entries in no order',
    timed(() => replay(shuffled, plan)),
  ),
);
console.log(
  said(
    'order alone',
    timed(() => orderLog(shuffled)),
  ),
);
console.log(
  said(
    'one more entry on a known state',
    timed(() => evolve(before, last)),
  ),
);
console.log(
  said(
    'verify (shape, digest, chain)',
    timed(() => verifyLog(entries)),
  ),
);

function timed(work: () => unknown): readonly number[] {
  const times: number[] = [];
  for (let run = 0; run < warmUp + runs; run += 1) {
    const began = performance.now();
    work();
    times.push(performance.now() - began);
  }
  return times.slice(warmUp);
}

/** The same job with its points looked at again until the log is so long; its seal at the end is left off. */
function grown(from: readonly Entry[], length: number): readonly Entry[] {
  const log = from.filter(({ event }) => event.kind !== 'record-amended').slice(0, length);
  const points = log.filter(({ event }) => event.kind === 'point-looked-at');
  const entries = [...log];
  for (let n = 0; entries.length < length; n += 1) {
    const again = points[n % points.length];
    if (again === undefined) throw new Error('the log has points that were looked at');
    const { v, job, device, at, by, event } = again;
    entries.push(seal({ v, job, device, at, by, event, ...nextPlace(logEnd(entries, device)) }));
  }
  return entries;
}
