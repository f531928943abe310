/** Covering arrays: few rows in which every pair, or every triple, of values that may meet stands at least once. */

import { seededRandom } from './seeded-random';

export type Value = readonly [parameter: number, choice: number];

export interface Space {
  /** By parameter, how many values it has. */
  readonly levels: readonly number[];
  readonly mayMeet: (one: Value, other: Value) => boolean;
  /** What no pair can tell. */
  readonly accepts: (row: readonly number[]) => boolean;
}

export interface Covering {
  readonly rows: readonly (readonly number[])[];
  /** Combinations whose values may meet two by two, and that no row was found for. */
  readonly unreached: readonly (readonly Value[])[];
}

const triesForOne = 60;
const greedyTries = 4;

/**
 * One row at a time, each built round a combination not yet covered and filled so that it covers as many more as it
 * can. Source: the one-row-at-a-time greedy of Cohen, Dalal, Fredman and Patton (1997).
 */
export function coveringArray(given: Space, strength: 2 | 3, seed: number): Covering {
  const pairs = strength === 3 ? coveringArray(given, 2, seed) : { rows: [], unreached: [] };
  const space = { ...given, mayMeet: mayMeetBut(pairs.unreached, given.mayMeet) };
  const grid = new Grid(space, strength);
  const random = seededRandom(seed);
  const rows: (readonly number[])[] = [...pairs.rows];
  const unreached: (readonly Value[])[] = [...pairs.unreached];
  for (const row of rows) grid.cover(row);
  for (let open = grid.nextOpen(); open !== undefined; open = grid.nextOpen()) {
    const row = rowAround(open, space, grid, random);
    if (row === undefined) {
      unreached.push(open);
      grid.close(open);
    } else {
      rows.push(row);
      grid.cover(row);
    }
  }
  return { rows, unreached };
}

/** One row by the dice alone; undefined when they run into a corner, which another seed need not. */
export function rowByDice(space: Space, seed: number): readonly number[] | undefined {
  const random = seededRandom(seed);
  const row: number[] = [];
  for (const parameter of shuffled(space.levels.keys(), random)) {
    const possible = [...Array(space.levels[parameter] ?? 0).keys()].filter((choice) =>
      row.every(
        (other, at) => other === undefined || space.mayMeet([at, other], [parameter, choice]),
      ),
    );
    const choice = possible[Math.floor(random() * possible.length)];
    if (choice === undefined) return undefined;
    row[parameter] = choice;
  }
  return space.accepts(row) ? row : undefined;
}

/** Whether values that may meet two by two still leave some parameter without a value, step by step. */
export function isRuledOut({ levels, mayMeet }: Space, values: readonly Value[]): boolean {
  const fixed = new Map(values);
  for (let again = true; again; ) {
    again = false;
    for (const [parameter, level] of levels.entries()) {
      if (fixed.has(parameter)) continue;
      const possible = [...Array(level).keys()].filter((choice) =>
        [...fixed].every((value) => mayMeet(value, [parameter, choice])),
      );
      if (possible.length === 0) return true;
      if (possible.length === 1) {
        fixed.set(parameter, possible[0] ?? 0);
        again = true;
      }
    }
  }
  return false;
}

/** A pair that no row holds stands in no triple either. */
function mayMeetBut(
  never: readonly (readonly Value[])[],
  mayMeet: Space['mayMeet'],
): Space['mayMeet'] {
  const key = (values: readonly Value[]) => values.map((value) => value.join(':')).join(' ');
  const known = new Set(never.map(key));
  return (one, other) => !known.has(key([one, other])) && mayMeet(one, other);
}

function rowAround(
  core: readonly Value[],
  space: Space,
  grid: Grid,
  random: () => number,
): number[] | undefined {
  for (let tries = 0; tries < triesForOne; tries += 1) {
    // What can never be covered always looks most worth covering: after a few vain tries the dice decide alone.
    const row = filled(core, space, grid, random, tries < greedyTries);
    if (row !== undefined && space.accepts(row)) return row;
  }
  return undefined;
}

function filled(
  core: readonly Value[],
  { levels }: Space,
  grid: Grid,
  random: () => number,
  isGreedy: boolean,
): number[] | undefined {
  const row = levels.map(() => -1);
  const fixed: number[] = [];
  const fix = ([parameter, choice]: Value) => {
    row[parameter] = choice;
    fixed.push(parameter);
  };
  core.forEach(fix);
  const rest = shuffled(levels.keys(), random).filter((parameter) => row[parameter] === -1);
  for (const parameter of rest) {
    const best = isGreedy
      ? grid.best(parameter, row, fixed, random)
      : grid.any(parameter, row, fixed, random);
    if (best === undefined) return undefined;
    fix([parameter, best]);
  }
  return row;
}

function shuffled(items: Iterable<number>, random: () => number): number[] {
  const list = [...items];
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    [list[last], list[other]] = [list[other] as number, list[last] as number]; // both positions are in the list
  }
  return list;
}

/** Which combinations are still open, one byte each. */
class Grid {
  readonly #levels: readonly number[];
  readonly #starts: number[] = [0];
  readonly #meets: Uint8Array;
  readonly #total: number;
  readonly #strength: 2 | 3;
  readonly #open: Uint8Array;
  readonly #offsets: Int32Array;
  readonly #sets: (readonly number[])[] = [];
  #at = 0;
  #inside = 0;

  constructor({ levels, mayMeet }: Space, strength: 2 | 3) {
    this.#levels = levels;
    this.#strength = strength;
    for (const level of levels) this.#starts.push((this.#starts.at(-1) ?? 0) + level);
    this.#total = this.#starts.at(-1) ?? 0;
    this.#meets = new Uint8Array(this.#total ** 2);
    const values = levels.flatMap((level, parameter) =>
      Array.from({ length: level }, (_, choice) => [parameter, choice] as const),
    );
    for (const [a, one] of values.entries())
      for (const [b, other] of values.entries())
        this.#meets[a * this.#total + b] = mayMeet(one, other) && mayMeet(other, one) ? 1 : 0;

    const n = levels.length;
    this.#offsets = new Int32Array(n ** strength);
    let size = 0;
    for (let i = 0; i < n; i += 1)
      for (let j = i + 1; j < n; j += 1)
        for (let k = strength === 3 ? j + 1 : n - 1; k < n; k += 1) {
          const set = strength === 3 ? [i, j, k] : [i, j];
          this.#sets.push(set);
          this.#offsets[this.#place(set)] = size;
          size += set.reduce((product, parameter) => product * (levels[parameter] ?? 1), 1);
        }
    this.#open = new Uint8Array(size);
    this.#openAll();
  }

  #place(set: readonly number[]): number {
    return set.reduce((place, parameter) => place * this.#levels.length + parameter, 0);
  }

  #openAll(): void {
    for (const set of this.#sets)
      this.#openSet(set, 0, [], this.#offsets[this.#place(set)] ?? 0, 0);
  }

  /** Opens every combination of a set whose values may all meet, parameter by parameter. */
  #openSet(
    set: readonly number[],
    depth: number,
    chosen: number[],
    offset: number,
    inside: number,
  ): void {
    const parameter = set[depth];
    if (parameter === undefined) {
      this.#open[offset + inside] = 1;
      return;
    }
    const level = this.#levels[parameter] ?? 1;
    for (let choice = 0; choice < level; choice += 1) {
      const meetsAll = chosen.every((other, at) =>
        this.#meet(set[at] ?? 0, other, parameter, choice),
      );
      if (!meetsAll) continue;
      chosen.push(choice);
      this.#openSet(set, depth + 1, chosen, offset, inside * level + choice);
      chosen.pop();
    }
  }

  #valuesOf(set: readonly number[], inside: number): readonly Value[] {
    const values: Value[] = [];
    let rest = inside;
    for (const parameter of [...set].reverse()) {
      const level = this.#levels[parameter] ?? 1;
      values.unshift([parameter, rest % level]);
      rest = Math.floor(rest / level);
    }
    return values;
  }

  #meet(p: number, c: number, q: number, d: number): boolean {
    const one = (this.#starts[p] ?? 0) + c;
    return this.#meets[one * this.#total + (this.#starts[q] ?? 0) + d] === 1;
  }

  /** The first combination that no row holds yet; what was passed stays covered. */
  nextOpen(): readonly Value[] | undefined {
    for (; this.#at < this.#sets.length; this.#at += 1, this.#inside = 0) {
      const set = this.#sets[this.#at] ?? [];
      const offset = this.#offsets[this.#place(set)] ?? 0;
      const count = set.reduce((product, parameter) => product * (this.#levels[parameter] ?? 1), 1);
      for (; this.#inside < count; this.#inside += 1)
        if (this.#open[offset + this.#inside] === 1) return this.#valuesOf(set, this.#inside);
    }
    return undefined;
  }

  close(values: readonly Value[]): void {
    const set = values.map(([parameter]) => parameter);
    const inside = values.reduce((index, [p, c]) => index * (this.#levels[p] ?? 1) + c, 0);
    this.#open[(this.#offsets[this.#place(set)] ?? 0) + inside] = 0;
  }

  cover(row: readonly number[]): void {
    const n = row.length;
    for (let i = 0; i < n; i += 1)
      for (let j = i + 1; j < n; j += 1)
        if (this.#strength === 2) this.#open[this.#pairAt(row, i, j)] = 0;
        else for (let k = j + 1; k < n; k += 1) this.#open[this.#tripleAt(row, i, j, k)] = 0;
  }

  /** The value of a parameter that covers most with what is fixed; of equals any; none that may meet it all gives none. */
  best(
    parameter: number,
    row: readonly number[],
    fixed: readonly number[],
    random: () => number,
  ): number | undefined {
    const gains =
      this.#strength === 2
        ? this.#pairGains(parameter, row, fixed)
        : this.#tripleGains(parameter, row, fixed);
    let best: number | undefined;
    let most = -1;
    for (const [choice, gain] of gains.entries()) {
      const tried = gain + random() * 0.5;
      if (tried <= most) continue;
      if (!fixed.every((other) => this.#meet(parameter, choice, other, row[other] ?? 0))) continue;
      most = tried;
      best = choice;
    }
    return best;
  }

  /** A value that may meet all that is fixed, by the dice. */
  any(
    parameter: number,
    row: readonly number[],
    fixed: readonly number[],
    random: () => number,
  ): number | undefined {
    const possible = [...Array(this.#levels[parameter] ?? 0).keys()].filter((choice) =>
      fixed.every((other) => this.#meet(parameter, choice, other, row[other] ?? 0)),
    );
    return possible[Math.floor(random() * possible.length)];
  }

  #pairGains(p: number, row: readonly number[], fixed: readonly number[]): number[] {
    const gains = new Array<number>(this.#levels[p] ?? 0).fill(0);
    const tried = [...row];
    for (let choice = 0; choice < gains.length; choice += 1) {
      tried[p] = choice;
      for (const other of fixed)
        gains[choice] =
          (gains[choice] ?? 0) +
          (this.#open[this.#pairAt(tried, Math.min(p, other), Math.max(p, other))] ?? 0);
    }
    return gains;
  }

  /** The innermost loop of it all: every place is worked out once, and read for each choice in turn. */
  #tripleGains(p: number, row: readonly number[], fixed: readonly number[]): number[] {
    const open = this.#open;
    const offsets = this.#offsets;
    const levels = this.#levels as number[];
    const rows = row as number[];
    const n = rows.length;
    const level = levels[p] as number;
    const gains = new Array<number>(level).fill(0);
    const sorted = [...fixed].sort((a, b) => a - b);
    for (let i = 0; i < sorted.length; i += 1) {
      const a = sorted[i] as number;
      const ra = rows[a] as number;
      for (let j = i + 1; j < sorted.length; j += 1) {
        const b = sorted[j] as number;
        const lb = levels[b] as number;
        const rb = rows[b] as number;
        let at: number;
        let stride: number;
        if (p < a) {
          stride = (levels[a] as number) * lb;
          at = (offsets[(p * n + a) * n + b] as number) + ra * lb + rb;
        } else if (p < b) {
          stride = lb;
          at = (offsets[(a * n + p) * n + b] as number) + ra * level * lb + rb;
        } else {
          stride = 1;
          at = (offsets[(a * n + b) * n + p] as number) + (ra * lb + rb) * level;
        }
        for (let choice = 0; choice < level; choice += 1, at += stride)
          gains[choice] = (gains[choice] as number) + (open[at] as number);
      }
    }
    return gains;
  }

  #pairAt(row: readonly number[], i: number, j: number): number {
    const offset = this.#offsets[i * row.length + j] as number; // every pair has one
    return offset + (row[i] as number) * (this.#levels[j] as number) + (row[j] as number);
  }

  #tripleAt(row: readonly number[], i: number, j: number, k: number): number {
    const n = row.length;
    const offset = this.#offsets[(i * n + j) * n + k] as number; // every triple has one
    const inside = (row[i] as number) * (this.#levels[j] as number) + (row[j] as number);
    return offset + inside * (this.#levels[k] as number) + (row[k] as number);
  }
}
