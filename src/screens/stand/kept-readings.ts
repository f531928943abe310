/** Readings that were taken but not yet recorded with their pass: they outlast a walk to the counter. */

import { useStore } from 'zustand';
import type { BoltReading, NextPass } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import type { Wrench } from '../../engine/torque';
import { writeTorqueMarking } from '../../engine/units';
import { useApp } from '../app-context';
import type { ShownJob } from '../use-job';

export interface ReadJoint {
  readonly shown: ShownJob;
  readonly step: PlanStep;
  readonly next: NextPass | undefined;
  readonly wrench: Wrench | undefined;
  readonly adapterId?: string | undefined;
}

interface Kept {
  /** The pass, figure, wrench and adapter they belong to: with another, they mean nothing. */
  readonly of: string;
  readonly readings: readonly BoltReading[];
}

export function useKeptReadings(joint: ReadJoint): {
  readonly of: string;
  readonly kept: readonly BoltReading[];
  readonly keep: (readings: readonly BoltReading[]) => void;
} {
  const app = useApp();
  const key = `readings ${joint.shown.open.job} ${joint.step.id}`;
  const text = useStore(app.session, ({ drafts }) => drafts[key]);
  const of = passOf(joint);
  const draft = keptIn(text);
  return {
    of,
    kept: draft?.of === of ? draft.readings : [],
    keep: (readings) =>
      app.session
        .getState()
        .draft(key, readings.length === 0 ? '' : JSON.stringify({ of, readings } satisfies Kept)),
  };
}

/** The last pass that was made is part of it, so that the same pass made again begins without readings. */
function passOf({ shown, step, next, wrench, adapterId }: ReadJoint): string {
  const made = shown.open.state.joints[step.joint?.id ?? '']?.passes.at(-1)?.entry;
  const figure = next && writeTorqueMarking(next.figure, 'N·m', 3);
  return [made, next?.pass.pass, figure, wrench?.id, adapterId].map((one) => one ?? '').join(' · ');
}

function keptIn(text: string | undefined): Kept | undefined {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text) as Kept; // only this file writes it
  } catch {
    return undefined;
  }
}
