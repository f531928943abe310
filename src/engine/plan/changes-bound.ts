/** The fewest changes that any order of the work can have, proven from below. */

import { compareNumbers } from '../base';
import {
  add,
  afterStep,
  type Bits,
  has,
  isFree,
  keyOf,
  type Stand,
  startOf,
  type Work,
} from './work-states';

/**
 * No order has fewer changes than this. Best-first search (A*; Hart, Nilsson and Raphael, 1968) over at most `effort`
 * stands: when it ends early, no stand still open promises less than the answer. What a stand promises is the sum of
 * three counts, each of which no order can stay under: zone changes with the tools forgotten, how often each tool has
 * to be taken up as what must lie between two of its steps breaks its work, and the same for sides.
 */
export function fewestChangesBound(work: Work, effort: number): number {
  const promise = promiseOf(work);
  const open: Stand[][] = [];
  const seen = new Map<string, number>();
  const offer = (stand: Stand, atLeast: number) => {
    const key = keyOf(stand);
    const known = seen.get(key);
    if (known !== undefined && known <= stand.changes) return;
    seen.set(key, stand.changes);
    const at = Math.max(atLeast, stand.changes + promise(stand));
    open[at] ??= [];
    open[at].push(stand);
  };
  offer(startOf(work), 0);
  let tried = 0;
  for (let bound = 0; bound < open.length; bound += 1) {
    const level = open[bound] ?? [];
    for (let stand = level.pop(); stand !== undefined; stand = level.pop()) {
      if (stand.left === 0 || tried >= effort) return bound;
      tried += 1;
      for (let step = 0; step < work.count; step += 1)
        if (isFree(work, stand.done, step)) offer(afterStep(work, stand, step), bound);
    }
  }
  return 0;
}

/** The same with a rougher count of zones: enough to rank stands by, and cheap. */
export function roughPromiseOf(work: Work): (stand: Stand) => number {
  const kinds = [work.zone, work.tool, work.side].map((kindOf) => takesLeft(work, kindOf));
  return ({ done, zone, tool, side }) =>
    kinds.reduce((sum, takes, index) => sum + takes(done, [zone, tool, side][index] ?? -1), 0);
}

function promiseOf(work: Work): (stand: Stand) => number {
  const toolTakes = takesLeft(work, work.tool);
  const sideTakes = takesLeft(work, work.side);
  const zones = zoneChangesLeft(work);
  return (stand) =>
    toolTakes(stand.done, stand.tool) + sideTakes(stand.done, stand.side) + zones(stand);
}

/**
 * How often tools (or sides) have to be taken up yet. Of each, the longest chain of its steps that are still to do, in
 * which something with another tool must come between one and the next; the one in the hand may serve its first.
 */
function takesLeft(work: Work, kindOf: readonly number[]): (done: Bits, inHand: number) => number {
  const kinds = Math.max(-1, ...kindOf) + 1;
  const chain = chains(work, kindOf);
  return (done, inHand) => {
    const takes = new Int32Array(kinds);
    for (let step = 0; step < work.count; step += 1) {
      const kind = kindOf[step] as number; // every step has one, if only −1
      if (kind === -1 || has(done, step)) continue;
      takes[kind] = Math.max(takes[kind] as number, chain[step] as number);
    }
    let sum = 0;
    for (const count of takes) sum += count;
    const isServed = inHand === -1 ? sum > 0 : (takes[inHand] ?? 0) > 0;
    return isServed ? sum - 1 : sum;
  };
}

/** By step, how many separate takes of its tool begin with it at least. */
function chains(work: Work, kindOf: readonly number[]): readonly number[] {
  const chain: number[] = kindOf.map((kind) => (kind === -1 ? 0 : 1));
  const steps = [...kindOf.keys()].filter((step) => kindOf[step] !== -1);
  // Later steps first, so that what follows a step is known before it.
  const bySize = (step: number) =>
    steps.filter((other) => has(work.earlier[step] as Bits, other)).length;
  const sizes = new Map(steps.map((step) => [step, bySize(step)]));
  const lastFirst = [...steps].sort((a, b) => (sizes.get(b) ?? 0) - (sizes.get(a) ?? 0));
  for (const step of lastFirst)
    for (const later of steps) {
      if (kindOf[later] !== kindOf[step] || !has(work.earlier[later] as Bits, step)) continue;
      const isBroken = steps.some(
        (between) =>
          kindOf[between] !== kindOf[step] &&
          has(work.earlier[between] as Bits, step) &&
          has(work.earlier[later] as Bits, between),
      );
      chain[step] = Math.max(chain[step] ?? 0, (chain[later] ?? 0) + (isBroken ? 1 : 0));
    }
  return chain;
}

/** The fewest zone changes to come if tools and sides counted nothing: exact, since a zone is never better left early. */
function zoneChangesLeft(work: Work): (stand: Stand) => number {
  const known = new Map<string, number>();
  const zones = [...new Set(work.zone)];
  const atLeast = takesLeft(work, work.zone);
  /** The zones that promise least are tried first, and none that promises no less than what is found already. */
  const leastOf = (open: readonly number[], here: Bits): number =>
    open
      .map((zone) => ({ zone, promised: atLeast(here, zone) }))
      .sort((a, b) => compareNumbers(a.promised, b.promised))
      .reduce(
        (best, { zone, promised }) => (promised < best ? Math.min(best, fewest(here, zone)) : best),
        Number.POSITIVE_INFINITY,
      );
  const fewest = (done: Bits, zone: number): number => {
    const here = allDoneIn(work, done, zone);
    const key = `${here.join()}|${zone}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const open = zones.filter((other) =>
      work.zone.some((at, step) => at === other && isFree(work, here, step)),
    );
    const answer = open.length === 0 ? 0 : 1 + leastOf(open, here);
    known.set(key, answer);
    return answer;
  };
  return ({ done, zone, left }) => {
    if (left === 0) return 0;
    return zone === -1 ? fewest(done, zone) - 1 : fewest(done, zone);
  };
}

function allDoneIn(work: Work, done: Bits, zone: number): Bits {
  const here = done.slice();
  for (let again = true; again; ) {
    again = false;
    for (let step = 0; step < work.count; step += 1)
      if (work.zone[step] === zone && isFree(work, here, step)) {
        add(here, step);
        again = true;
      }
  }
  return here;
}
