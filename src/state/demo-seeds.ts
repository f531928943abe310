/** The invented shop as data: who works there, with what, on which bikes, and how far each has come. */

import type { Bike } from '../engine/bike';
import type { Severity } from '../engine/inspection';
import type { HoldReason, Role } from '../engine/job';
import type { Adapter, Figure, Wrench, WrenchCondition } from '../engine/torque';

export interface DemoPerson {
  readonly id: string;
  readonly name: string;
  readonly roles: readonly Role[];
  readonly pin: string;
}

/** Dates count from the day of the first start. */
export type DemoWrench = Omit<Wrench, 'calibratedOn' | 'dueOn'> & {
  readonly calibratedDaysAgo: number;
  readonly dueInDays: number;
  readonly notes?: readonly DemoNote[] | undefined;
};

export interface DemoNote {
  readonly to: WrenchCondition;
  readonly daysAgo: number;
  readonly time: string;
  readonly by: string;
  readonly reason: string;
}

export type DemoAdapter = Adapter & {
  readonly id: string;
  readonly name: string;
  readonly wrench: string;
};

export interface DemoDue {
  readonly inDays: number;
  readonly time: string;
}

interface DemoJobShape {
  /** The frame number of one of the demo's bikes. */
  readonly bike: string;
  readonly receivedBy: string;
  readonly receivedDaysAgo: number;
  readonly cartonDamage?: string | undefined;
}

export interface DemoFinding {
  readonly point: string;
  readonly severity: Severity;
  readonly text: string;
  readonly closedHow?: string | undefined;
}

export type DemoJob = DemoJobShape &
  (
    | { readonly state: 'boxed'; readonly due?: DemoDue | undefined }
    | {
        readonly state: 'on-the-stand';
        readonly due: DemoDue;
        readonly builder: string;
        readonly stepsDone: number;
      }
    | {
        readonly state: 'on-hold';
        readonly due: DemoDue;
        readonly builder: string;
        readonly stepsDone: number;
        readonly for: HoldReason;
        readonly note: string;
        readonly missing: readonly string[];
      }
    | { readonly state: 'to-be-checked'; readonly due: DemoDue; readonly builder: string }
    | {
        readonly state: 'handed-over';
        readonly daysAgo: number;
        readonly builder: string;
        readonly checker: string;
        readonly customer: { readonly name: string; readonly contact?: string | undefined };
        readonly findings: readonly DemoFinding[];
      }
  );

export interface DemoFigure {
  readonly make: string;
  readonly model: string;
  readonly joint: string;
  readonly figure: Figure;
}

/** What stands on the part itself. */
export interface DemoMarking {
  readonly make: string;
  readonly model: string;
  readonly joint: string;
  readonly printed: string;
}

export interface DemoSeeds {
  readonly shop: { readonly name: string; readonly market: string };
  readonly people: readonly DemoPerson[];
  readonly wrenches: readonly DemoWrench[];
  readonly adapters: readonly DemoAdapter[];
  readonly bikes: readonly Bike[];
  readonly figures: readonly DemoFigure[];
  readonly markings: readonly DemoMarking[];
  readonly jobs: readonly DemoJob[];
}
