/** base: the words every engine room shares: results, asserts, brands, zones, order, graphs. */

export { assert, assertNever, BrokenInvariant } from './assert';
export type { Branded } from './brand';
export { type CycleFound, descendants, type Predecessors, topologicalOrder } from './graph';
export { compareNumbers, compareText } from './order';
export { type Ok, ok, type Refusal, type Refused, type Result, refuse } from './result';
export { type Zone, zones } from './zones';
