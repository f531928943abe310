/** Why a command is refused: a closed gate, or facts about what was asked. */

import type { SetPointRefusal, UsualRangeNotAccepted } from '../torque';
import type { Gate } from './gates';
import type { ReadingRefusal } from './pass-readings';
import type { NoNextPass } from './tightening';

export type JobRefusal =
  | Gate
  | NoNextPass
  | ReadingRefusal
  | SetPointRefusal
  | UsualRangeNotAccepted
  | { readonly code: 'plan-for-another-bike' }
  | { readonly code: 'part-unknown'; readonly part: string }
  | { readonly code: 'step-unknown'; readonly step: string }
  | { readonly code: 'point-unknown'; readonly point: string }
  | { readonly code: 'joint-needs-no-second-eyes'; readonly joint: string }
  | { readonly code: 'point-needs-value'; readonly point: string }
  | { readonly code: 'finding-unknown'; readonly finding: string }
  | { readonly code: 'finding-already-closed'; readonly finding: string }
  | { readonly code: 'finding-already-raised'; readonly finding: string }
  | { readonly code: 'finding-missing'; readonly point: string }
  | { readonly code: 'measure-unknown'; readonly measure: string }
  | { readonly code: 'step-already-done'; readonly step: string }
  | { readonly code: 'step-not-done'; readonly step: string }
  | { readonly code: 'step-needs-tightening'; readonly step: string; readonly joint: string }
  | {
      readonly code: 'step-needs-measures';
      readonly step: string;
      readonly measures: readonly string[];
    }
  | {
      readonly code: 'measure-outside-limits';
      readonly measure: string;
      readonly value: number;
      readonly unit: string;
      readonly min?: number | undefined;
      readonly max?: number | undefined;
    }
  | { readonly code: 'reason-missing' }
  | { readonly code: 'usual-range-needs-own-name' }
  | { readonly code: 'pass-out-of-turn'; readonly expected: number; readonly asked: number }
  | { readonly code: 'nothing-named' }
  | { readonly code: 'signature-of-another-meaning' }
  | { readonly code: 'signature-name-missing' }
  | { readonly code: 'signature-overtaken' }
  | { readonly code: 'customer-missing' }
  | { readonly code: 'customer-not-told'; readonly topics: readonly string[] }
  | { readonly code: 'first-check-not-after-hand-over' };
