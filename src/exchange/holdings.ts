/** What a copy carries, as storage holds it; the app hands it over. */

import type { Entry } from '../engine/integrity';
import type { JobPlan, JobSummary, Role, WrenchDay } from '../engine/job';
import type { CatalogueVersion } from '../engine/plan';
import type { Adapter, Figure, Wrench } from '../engine/torque';
import type { CopiedToolNote } from './tool-note.schema';

export interface Holdings {
  readonly entries: readonly Entry[];
  readonly rows: readonly CopiedRow[];
  readonly plans: readonly { readonly digest: string; readonly plan: JobPlan }[];
  readonly blobs: readonly {
    readonly digest: string;
    readonly type: string;
    readonly bytes: Uint8Array;
  }[];
  readonly people: readonly {
    readonly id: string;
    readonly name: string;
    readonly roles: readonly Role[];
    readonly active: boolean;
  }[];
  readonly customers: readonly {
    readonly digest: string;
    readonly salt: string;
    readonly name: string;
    readonly contact?: string;
  }[];
  readonly tools: readonly (
    | {
        readonly id: string;
        readonly kind: 'wrench';
        readonly wrench: Wrench;
        readonly countedBefore?: number;
        readonly history?: readonly CopiedToolNote[];
      }
    | {
        readonly id: string;
        readonly kind: 'adapter';
        readonly name: string;
        readonly adapter: Adapter;
        readonly wrench?: string;
        readonly retired?: boolean;
        readonly history?: readonly CopiedToolNote[];
      }
  )[];
  readonly figures: readonly {
    readonly id: string;
    readonly make: string;
    readonly model: string;
    readonly joint: string;
    readonly figure: Figure;
  }[];
  readonly settings: readonly { readonly id: string; readonly value: unknown }[];
  readonly catalogueVersions?: readonly CatalogueVersion[];
  readonly keys?: readonly { readonly id: string; readonly value: unknown }[];
}

export interface CopiedRow extends JobSummary {
  readonly job: string;
  readonly heads: readonly string[];
  readonly lamport: number;
  readonly seqs: Readonly<Record<string, number>>;
  readonly count: number;
  readonly wrenchDays: readonly WrenchDay[];
}
