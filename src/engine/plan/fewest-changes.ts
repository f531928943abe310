/** An order with few changes of zone, tool and side: the promising stands are kept side by side, the rest given up. */

import { compareNumbers } from '../base';
import { roughPromiseOf } from './changes-bound';
import { afterStep, isFree, keyOf, type Stand, startOf, stepsOf, type Work } from './work-states';

/** Up to this many steps every stand is kept, so that the order has the fewest changes there can be. */
export const provenSteps = 12;
const keptStands = 10;

/**
 * Steps by number in an order that every step's predecessors allow. Beam search over stands; of equal stands the one
 * found first stays, and steps are tried in the given order, so the answer is the same on every machine.
 */
export function orderOfFewestChanges(work: Work): readonly number[] {
  const width = work.count <= provenSteps ? Number.POSITIVE_INFINITY : keptStands;
  const promise = roughPromiseOf(work);
  let stands: readonly Stand[] = [startOf(work)];
  let best: Stand | undefined;
  while (stands.length > 0) {
    const next = new Map<string, Stand>();
    for (const stand of stands)
      for (const after of nextStands(work, stand)) {
        if (best !== undefined && after.changes > best.changes) continue;
        if (after.left > 0) keepBetter(next, after);
        else if (best === undefined || isBetter(after, best)) best = after;
      }
    stands = mostPromising([...next.values()], width, promise);
  }
  return best === undefined ? [] : stepsOf(best);
}

function nextStands(work: Work, stand: Stand): readonly Stand[] {
  const next: Stand[] = [];
  for (let step = 0; step < work.count; step += 1)
    if (isFree(work, stand.done, step)) next.push(afterStep(work, stand, step));
  return next;
}

function keepBetter(stands: Map<string, Stand>, stand: Stand): void {
  const key = keyOf(stand);
  const known = stands.get(key);
  if (known === undefined || isBetter(stand, known)) stands.set(key, stand);
}

/** Fewer changes; of equals the one whose steps stand earlier in the given order. */
function isBetter(one: Stand, other: Stand): boolean {
  if (one.changes !== other.changes) return one.changes < other.changes;
  const [steps, others] = [stepsOf(one), stepsOf(other)];
  const at = steps.findIndex((step, index) => step !== others[index]);
  return at !== -1 && (steps[at] ?? 0) < (others[at] ?? 0);
}

function mostPromising(
  stands: readonly Stand[],
  width: number,
  promise: (stand: Stand) => number,
): readonly Stand[] {
  if (stands.length <= width) return stands;
  return stands
    .map((stand) => ({ stand, least: stand.changes + promise(stand) }))
    .sort((a, b) => compareNumbers(a.least, b.least) || compareNumbers(a.stand.left, b.stand.left))
    .slice(0, width)
    .map(({ stand }) => stand);
}
