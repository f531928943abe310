/** What a screen sees of one open job. */

import type { Entry } from '../engine/integrity';
import type { Asked, JobState } from '../engine/job';
import type { StorageRefusal } from '../storage/contract';
import type { Extras, PerformRefusal } from './perform';

export type ActRefusal = PerformRefusal | { readonly code: 'nobody-at-the-stand' };

/** What could not be done, kept so that it can be asked again. */
export interface Problem {
  readonly asked: Asked;
  readonly extras?: Extras | undefined;
  readonly refusal: ActRefusal;
}

export interface OpenJob {
  readonly job: string;
  readonly status: 'loading' | 'ready' | 'missing' | 'failed';
  readonly state: JobState;
  readonly heads: readonly string[];
  /** The log, in order. */
  readonly entries: readonly Entry[];
  /** A write is on its way to the disk. */
  readonly busy: boolean;
  readonly problem?: Problem | undefined;
  /** Why it could not be read. */
  readonly failure?: StorageRefusal | undefined;
  /** Counts up when somebody else changed this job. */
  readonly changedElsewhere: number;
}
