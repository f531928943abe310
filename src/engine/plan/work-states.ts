/** Where a build stands: what is done, and the zone, tool and side it is being done with; small enough to try thousands. */

import type { Predecessors } from '../base';
import { type Handled, sideOf, toolOf } from './work-changes';

/** Steps as numbers, in the given order; −1 says that a step has no tool, or no side, of its own. */
export interface Work {
  readonly count: number;
  readonly zone: readonly number[];
  readonly tool: readonly number[];
  readonly side: readonly number[];
  /** By step, what comes right before it, and all that comes before it, as sets of bits. */
  readonly before: readonly Bits[];
  readonly earlier: readonly Bits[];
}

/** A set of steps, 32 to a word. */
export type Bits = Int32Array;

export interface Stand {
  readonly done: Bits;
  readonly left: number;
  readonly zone: number;
  readonly tool: number;
  readonly side: number;
  readonly changes: number;
  /** The steps so far, last first. */
  readonly path: Path | undefined;
}
type Path = { readonly step: number; readonly rest: Path | undefined };

export function workOf(
  steps: readonly (Handled & { readonly id: string })[],
  predecessors: Predecessors,
): Work {
  const position = new Map(steps.map(({ id }, index) => [id, index]));
  const direct = steps.map(({ id }) =>
    (predecessors.get(id) ?? []).flatMap((other) => position.get(other) ?? []),
  );
  const words = Math.ceil(steps.length / 32);
  const before = direct.map((list) => bitsOf(list, words));
  return {
    count: steps.length,
    zone: numbered(steps.map(({ zone }) => zone)),
    tool: numbered(steps.map(toolOf)),
    side: numbered(steps.map(sideOf)),
    before,
    earlier: closedOver(direct, words),
  };
}

function numbered(values: readonly (string | undefined)[]): readonly number[] {
  const known = [...new Set(values)].filter((value) => value !== undefined);
  return values.map((value) => (value === undefined ? -1 : known.indexOf(value)));
}

function bitsOf(list: readonly number[], words: number): Bits {
  const bits = new Int32Array(words);
  for (const one of list) add(bits, one);
  return bits;
}

/** Everything before each step, through others; the steps hold no circle. */
function closedOver(direct: readonly (readonly number[])[], words: number): readonly Bits[] {
  const earlier: (Bits | undefined)[] = direct.map(() => undefined);
  const visit = (step: number): Bits => {
    const known = earlier[step];
    if (known) return known;
    const bits = new Int32Array(words);
    for (const other of direct[step] ?? []) {
      add(bits, other);
      for (const [word, value] of visit(other).entries()) bits[word] = (bits[word] ?? 0) | value;
    }
    earlier[step] = bits;
    return bits;
  };
  return direct.map((_, step) => visit(step));
}

export function has(bits: Bits, step: number): boolean {
  return (((bits[step >> 5] ?? 0) >>> (step & 31)) & 1) === 1;
}

export function add(bits: Bits, step: number): void {
  bits[step >> 5] = (bits[step >> 5] ?? 0) | (1 << (step & 31));
}

/** Whether the step is still to do and waits for nothing. */
export function isFree({ before }: Work, done: Bits, step: number): boolean {
  if (has(done, step)) return false;
  const waits = before[step] as Bits; // every step has its set
  for (let word = 0; word < waits.length; word += 1)
    if (((waits[word] as number) & ~(done[word] as number)) !== 0) return false;
  return true;
}

export function startOf(work: Work): Stand {
  const done = new Int32Array(Math.ceil(work.count / 32));
  const start = {
    done,
    left: work.count,
    zone: -1,
    tool: -1,
    side: -1,
    changes: 0,
    path: undefined,
  };
  return start;
}

/** The stand after one more step, with all that then needs no change, and all that is best done at once. */
export function afterStep(work: Work, stand: Stand, step: number): Stand {
  const zone = work.zone[step] as number; // the step is one of the work's
  const tool = work.tool[step] as number;
  const side = work.side[step] as number;
  const changes =
    (stand.zone !== -1 && stand.zone !== zone ? 1 : 0) +
    (tool !== -1 && stand.tool !== -1 && stand.tool !== tool ? 1 : 0) +
    (side !== -1 && stand.side !== -1 && stand.side !== side ? 1 : 0);
  const done = stand.done.slice();
  add(done, step);
  const next: Mutable = {
    done,
    left: stand.left - 1,
    zone,
    tool: tool === -1 ? stand.tool : tool,
    side: side === -1 ? stand.side : side,
    changes: stand.changes + changes,
    path: { step, rest: stand.path },
  };
  goOn(work, next);
  finishTools(work, next);
  return next;
}
type Mutable = { -readonly [Name in keyof Stand]: Stand[Name] };

/** What needs no change at all is never better done later: it is done at once, in the given order. */
function goOn(work: Work, stand: Mutable): void {
  for (let again = true; again; ) {
    again = false;
    for (let step = 0; step < work.count; step += 1) {
      if (work.zone[step] !== stand.zone) continue;
      const tool = work.tool[step];
      if (tool !== -1 && tool !== stand.tool) continue;
      const side = work.side[step];
      if (side !== -1 && side !== stand.side) continue;
      if (!isFree(work, stand.done, step)) continue;
      add(stand.done, step);
      stand.left -= 1;
      stand.path = { step, rest: stand.path };
      again = true;
    }
  }
}

/**
 * Once the tool in the hand has to be laid down whatever comes, another tool all of whose work is right here is best
 * taken up now: it has to be taken up once anyway, and nothing is lost by doing so here.
 */
function finishTools(work: Work, stand: Mutable): void {
  for (let again = true; again && stand.left > 0; ) {
    again = false;
    if (!isToolLaidDown(work, stand)) return;
    for (let step = 0; step < work.count && !again; step += 1) {
      const tool = work.tool[step] as number; // the step is one of the work's
      if (tool === -1 || tool === stand.tool || work.zone[step] !== stand.zone) continue;
      const side = work.side[step];
      if ((side !== -1 && side !== stand.side) || !isFree(work, stand.done, step)) continue;
      const tried: Mutable = { ...stand, done: stand.done.slice(), tool };
      goOn(work, tried);
      if (!isToolDone(work, tried, tool)) continue;
      tried.changes += 1;
      Object.assign(stand, tried);
      again = true;
    }
  }
}

function isToolDone(work: Work, { done }: Stand, tool: number): boolean {
  for (let step = 0; step < work.count; step += 1)
    if (work.tool[step] === tool && !has(done, step)) return false;
  return true;
}

/** Whether no further work of the tool in the hand can be reached with it in the hand. */
function isToolLaidDown(work: Work, stand: Stand): boolean {
  if (stand.tool === -1) return false;
  for (let step = 0; step < work.count; step += 1)
    if (work.tool[step] === stand.tool && !has(stand.done, step) && isReachable(work, stand, step))
      return false;
  return true;
}

function isReachable(work: Work, stand: Stand, step: number): boolean {
  const earlier = work.earlier[step] as Bits; // every step has its set
  for (let other = 0; other < work.count; other += 1) {
    const tool = work.tool[other];
    if (tool === -1 || tool === stand.tool) continue;
    if (has(earlier, other) && !has(stand.done, other)) return false;
  }
  return true;
}

/** Two stands with the same key have the same future. */
export function keyOf({ done, zone, tool, side }: Stand): string {
  return `${done.join()}|${zone}|${tool}|${side}`;
}

export function stepsOf({ path }: Stand): readonly number[] {
  const steps: number[] = [];
  for (let at = path; at !== undefined; at = at.rest) steps.push(at.step);
  return steps.reverse();
}
