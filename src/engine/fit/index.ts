/** fit: what must hold so that the bike carries and suits its rider: insertion, load, saddle height, reach. */

export {
  type Insertion,
  minimumInsertion,
  minimumQuillInsertion,
  type PostTooShort,
  type SeatPost,
} from './insertion';
export { type FitLimit, fitLimits, leverReachLimit, toeClearanceLimit } from './limits';
export {
  type LoadAsked,
  type LoadLimitUnknown,
  type LoadOverLimit,
  type LoadWithin,
  loadCheck,
} from './load';
export { saddleHeightFrom } from './saddle-height';
