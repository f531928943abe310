/** What grease does to the bolts of one joint of the plan: advice, or why nothing is computed. */

import { ok, type Refused, type Result, refuse } from '../base';
import {
  type Figure,
  type GreaseEffect,
  type GreaseRefusal,
  greaseEffect,
  type MaterialNotComputed,
} from '../torque';
import { type NewtonMetres, newtonMetres } from '../units';
import type { Preparation } from './catalogue.schema';
import { jointThread } from './joint-thread';
import type { PlanJoint } from './plan.schema';

export type GreaseAdvice = GreaseEffect & {
  /** N·m: what the advice is worked out at, the middle of the figure where it has two ends. */
  readonly torque: NewtonMetres;
};

/** Friction is in the tables for threads that are dry or oiled and greased, and for no other state. */
const computedPreparations: readonly Preparation[] = ['grease', 'oil', 'dry'];

/**
 * Dry against greased at the joint's own figure (N·m), for a bolt whose head is stamped `propertyClass`. Refuses, most
 * telling first: carbon or a material that is not described, threadlocker or compound, a thread that is not one of the
 * tables, and a bolt without a readable stamp: its strength is never guessed.
 */
export function greaseAdvice(asked: {
  readonly joint: Pick<PlanJoint, 'clamps' | 'preparation' | 'thread'>;
  readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
  readonly propertyClass: string | undefined;
}): Result<GreaseAdvice, GreaseAdviceRefusal> {
  const { joint, propertyClass } = asked;
  const clamps = joint.clamps ?? ['unknown'];
  const unfit = clamps.find((material) => material === 'carbon' || material === 'unknown');
  if (unfit !== undefined) return material(unfit);
  if (!computedPreparations.includes(joint.preparation))
    return refuse({ code: 'preparation-not-computed', preparation: joint.preparation });
  const thread = jointThread(joint.thread);
  if (thread === undefined) return refuse({ code: 'thread-not-one', thread: joint.thread });
  if (propertyClass === undefined) return refuse({ code: 'bolt-stamp-missing' });
  const torque = middleOf(asked.figure);
  const effect = greaseEffect({ thread, torque, propertyClass, clamps });
  return effect.ok ? ok({ ...effect.value, torque }) : effect;
}

export type GreaseAdviceRefusal =
  | GreaseRefusal
  | { readonly code: 'preparation-not-computed'; readonly preparation: Preparation }
  | { readonly code: 'thread-not-one'; readonly thread: string }
  | { readonly code: 'bolt-stamp-missing' };

function material(name: string): Refused<MaterialNotComputed> {
  return refuse({ code: 'material-not-computed', material: name });
}

function middleOf({ min, max, target }: Pick<Figure, 'min' | 'max' | 'target'>): NewtonMetres {
  if (target !== undefined) return target;
  return newtonMetres(((min ?? max ?? 0) + (max ?? min ?? 0)) / 2);
}
