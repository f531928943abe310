/** integrity: the log as a hash graph that shows any change: canonical JSON, digests, entries, order, verification. */

export { canonicalJson, deepestNesting, digestOf, digestOfBytes } from './canonical-json';
export {
  type ClaimedTime,
  type Entry,
  entryVersion,
  type LoggedEvent,
  seal,
  type UnsealedEntry,
} from './entry';
export { entrySchema } from './entry.schema';
export type { GraphFault } from './graph-fault';
export {
  headsOf,
  type LogEnd,
  logEnd,
  nextPlace,
  orderLog,
  type Place,
  type Placed,
} from './log-order';
export {
  type EntryPlace,
  type ExpectedLog,
  type LogDamaged,
  verifyLog,
  type WholeLog,
} from './verify-log';
