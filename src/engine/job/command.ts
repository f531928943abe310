/** What a person asks of a job. Time, person and the heads that were read are stamped on once and travel with it. */

import type { Bike } from '../bike';
import type { Severity, Verdict } from '../inspection';
import type { ClaimedTime } from '../integrity';
import type { Adapter, Figure, Wrench } from '../torque';
import type { HoldReason, Meaning, PartState } from './event.schema';
import type { JobPlan } from './job-plan.schema';
import type { BoltReading } from './pass-readings';

export const roles = ['mechanic', 'apprentice', 'supervisor'] as const;
export type Role = (typeof roles)[number];

export interface Stamp {
  /** The person's id. */
  readonly by: string;
  readonly roles: readonly Role[];
  readonly at: ClaimedTime;
  /** ISO date at the stand, for calibration and due dates. */
  readonly on: string;
  /** The heads of the log that the command was decided on. */
  readonly heads: readonly string[];
}

export interface NewFinding {
  readonly finding: string;
  readonly severity: Severity;
  readonly text: string;
  readonly photos?: readonly string[];
}

export interface Signing {
  readonly meaning: Meaning;
  readonly name?: string;
  readonly customer?: string;
  readonly heads: readonly string[];
  readonly jws: string;
  readonly strokes?: string;
}

export type Asked =
  | {
      readonly kind: 'receive-box';
      readonly bike: Bike;
      readonly due?: string;
      readonly delivery?: string;
      readonly cartonDamage?: string;
      readonly photos?: readonly string[];
    }
  | { readonly kind: 'describe-bike'; readonly bike: Bike }
  | { readonly kind: 'set-due'; readonly due?: string }
  | { readonly kind: 'open-job'; readonly plan: JobPlan }
  | {
      readonly kind: 'check-contents';
      readonly parts: readonly {
        readonly part: string;
        readonly state: PartState;
        readonly note?: string;
      }[];
    }
  | {
      readonly kind: 'do-step';
      readonly step: string;
      /** Values by measure id, in the measure's own unit. */
      readonly measures?: Readonly<Record<string, number>>;
    }
  | { readonly kind: 'reopen-step'; readonly step: string; readonly reason: string }
  | { readonly kind: 'set-step-aside'; readonly step: string; readonly reason: string }
  | { readonly kind: 'enter-figure'; readonly joint: string; readonly figure: Figure }
  | {
      readonly kind: 'make-pass';
      readonly step: string;
      readonly pass: number;
      readonly wrench: Wrench;
      /** What the part says, when this very pass confirms it. */
      readonly figure?: Figure;
      readonly adapter?: Adapter & { readonly id: string; readonly name: string };
      /** What the wrench showed, bolt by bolt, in the order in which it was read. */
      readonly readings?: readonly BoltReading[];
    }
  | {
      readonly kind: 'take-measure';
      readonly at: string;
      readonly measure: string;
      readonly value: number;
    }
  | {
      readonly kind: 'look-at-point';
      readonly point: string;
      readonly verdict: Verdict;
      readonly note?: string;
      readonly value?: number;
      readonly finding?: NewFinding;
    }
  | ({ readonly kind: 'raise-finding'; readonly at?: string } & NewFinding)
  | { readonly kind: 'close-finding'; readonly finding: string; readonly how: string }
  | { readonly kind: 'allow-finding'; readonly finding: string; readonly reason: string }
  /** A second pair of eyes on a joint that somebody who is still learning has tightened. */
  | { readonly kind: 'confirm-joint'; readonly joint: string }
  | { readonly kind: 'hold-job'; readonly for: HoldReason; readonly note: string }
  | { readonly kind: 'resume-job' }
  | { readonly kind: 'sign-built'; readonly signing: Signing }
  | { readonly kind: 'sign-checked'; readonly signing: Signing }
  | {
      readonly kind: 'send-back';
      readonly steps: readonly string[];
      readonly points: readonly string[];
      readonly reason: string;
    }
  | {
      readonly kind: 'hand-over';
      readonly customer: string;
      readonly told: readonly string[];
      readonly firstCheck: string;
      readonly signing: Signing;
    }
  | { readonly kind: 'amend-record'; readonly text: string };

export type CommandKind = Asked['kind'];
export type AskedOf<K extends CommandKind> = Extract<Asked, { readonly kind: K }>;
export type Command<K extends CommandKind = CommandKind> = AskedOf<K> & { readonly stamp: Stamp };
