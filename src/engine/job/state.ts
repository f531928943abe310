/** What a job's log adds up to. */

import type { Bike } from '../bike';
import type { Severity, Verdict } from '../inspection';
import type { ClaimedTime } from '../integrity';
import type { Figure } from '../torque';
import type { EventOf, HoldReason, Meaning, PartState, PassMade, Tightened } from './event.schema';
import type { JobPlan } from './job-plan.schema';

/** Who says so, when (claimed), in which entry. */
export interface Mark {
  readonly by: string;
  readonly at: ClaimedTime;
  readonly entry: string;
}

/** What disturbed a thing that was good. */
export interface Disturbance extends Mark {
  /** The step, point or finding that was disturbed. */
  readonly from: string;
  readonly reason: string;
}

export interface PartMark extends Mark {
  readonly state: PartState;
  readonly note?: string | undefined;
}

export interface StepMark {
  readonly standing: 'done' | 'stale' | 'reopened' | 'set-aside';
  /** Everyone who did it, first to last; two who did it apart are both kept. */
  readonly done: readonly Mark[];
  readonly reason?: string | undefined;
  readonly disturbed?: Disturbance | undefined;
}

export interface JointMark {
  readonly figure?: Figure | undefined;
  /** Passes made since the joint was last loosened. */
  readonly passes: readonly (PassMade & Mark)[];
  readonly tightened?: (Tightened & Mark) | undefined;
  /** Who looked at it when somebody still learning had tightened it. */
  readonly confirmed?: Mark | undefined;
  readonly stale: boolean;
}

export interface MeasureMark extends Mark {
  readonly value: number;
  readonly unit: string;
  readonly judged: 'inside' | 'outside' | 'undecided';
  readonly stale: boolean;
}

export interface PointMark extends Mark {
  readonly verdict: Verdict;
  readonly note?: string | undefined;
  readonly stale: boolean;
  readonly disturbed?: Disturbance | undefined;
}

export interface Finding {
  readonly id: string;
  readonly at?: string | undefined;
  readonly severity: Severity;
  readonly text: string;
  readonly photos: readonly string[];
  readonly raised: Mark;
  readonly closed?: (Mark & { readonly how: string }) | undefined;
  /** A supervisor let the bike go with it, and said why. */
  readonly allowed?: (Mark & { readonly reason: string }) | undefined;
}

export interface SignatureMark extends Mark {
  readonly meaning: Meaning;
  readonly name?: string | undefined;
  readonly customer?: string | undefined;
  readonly heads: readonly string[];
  readonly jws: string;
  readonly strokes?: string | undefined;
  readonly stale: boolean;
}

export interface JobState {
  readonly bike?: Bike;
  readonly due?: string | undefined;
  readonly received?: Mark & {
    readonly cartonDamage?: string | undefined;
    readonly photos: readonly string[];
    readonly delivery?: string | undefined;
  };
  readonly opened?: Mark & { readonly plan: string; readonly market: string };
  /** Found under the digest that `opened` names; without it nothing can be judged, only read. */
  readonly plan?: JobPlan | undefined;
  readonly contents: Readonly<Record<string, PartMark>>;
  readonly steps: Readonly<Record<string, StepMark>>;
  readonly joints: Readonly<Record<string, JointMark>>;
  /** By `${step or point}.${measure}`, in the order in which they were last taken. */
  readonly measures: Readonly<Record<string, MeasureMark>>;
  readonly points: Readonly<Record<string, PointMark>>;
  readonly findings: readonly Finding[];
  readonly hold?: (Mark & { readonly for: HoldReason; readonly note: string }) | undefined;
  readonly signatures: readonly SignatureMark[];
  readonly sentBack: readonly (Mark & {
    readonly steps: readonly string[];
    readonly points: readonly string[];
    readonly reason: string;
  })[];
  /** Everyone who worked on the bike before it was signed as built. */
  readonly builders: readonly string[];
  readonly handedOver?: (Mark & Omit<EventOf<'handed-over'>, 'kind' | 'v'>) | undefined;
  readonly amendments: readonly (Mark & { readonly text: string })[];
}

/** A job nothing has happened to yet; the plan is the one its log will name, where it is known. */
export function emptyJob(plan?: JobPlan): JobState {
  return {
    plan,
    contents: {},
    steps: {},
    joints: {},
    measures: {},
    points: {},
    findings: [],
    signatures: [],
    sentBack: [],
    builders: [],
    amendments: [],
  };
}
