/** integrity: the log as a hash graph that shows any change: canonical JSON, digests, entries, order, verification. */

export { canonicalJson, deepestNesting, digestOf, digestOfBytes } from './canonical-json';
export { type DamageKind, damageKinds, kindOfDamage } from './damage';
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
  besideHeads,
  type LogStanding,
  logStandings,
  type MergedLog,
  mergeLogs,
  pastOf,
  standingOfLog,
} from './log-pasts';
export { type Inclusion, isIncluded, type MerkleTree, merkleTree } from './merkle';
export type { SealBroken } from './seal-fault';
export {
  isUnderDigest,
  type RecordEnd,
  type RecordProof,
  type ShopDigest,
  shopDigest,
} from './shop-digest';
export {
  type EntryPlace,
  type ExpectedLog,
  type LogDamaged,
  type SignatureFinding,
  signatureFindings,
  verifyLog,
  type WholeLog,
} from './verify-log';
