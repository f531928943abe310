/** What grease does to a bolt at the same torque: advice in two figures, never a specification. */

import { ok, type Result, refuse } from '../base';
import type { NewtonMetres, Newtons } from '../units';
import {
  type Bearing,
  type FrictionRange,
  frictionByMaterial,
  socketHeadBearing,
} from './friction';
import {
  type BearingImpossible,
  isComputed,
  materialNotComputed,
  type PreloadRefusal,
  preloadFrom,
} from './preload';
import { isPropertyClass, proofLoad, strengthOf } from './property-classes';
import type { Thread } from './thread.schema';

export type PreloadRange = {
  /** N, at the highest and the lowest friction of the range. */
  readonly low: Newtons;
  readonly high: Newtons;
  /** The same as a share of the bolt's proof load; above 1 the bolt stretches for good. */
  readonly lowShare: number;
  readonly highShare: number;
};

export type GreaseEffect = {
  readonly dry: PreloadRange;
  readonly greased: PreloadRange;
  /** How many times the preload grows when a dry bolt is greased: friction at the middle of each range. */
  readonly gain: number;
  readonly proofLoad: Newtons;
};

/**
 * The preload of a steel or stainless metric bolt at one torque (N·m), dry and greased. Refuses a property class or thread
 * that is not in the tables, and any joint with carbon, plastic or an unknown material in it: `clamps` names what the bolt
 * holds together. Without `bearing` an ordinary socket head is taken.
 */
export function greaseEffect(bolt: {
  readonly thread: Thread;
  readonly torque: NewtonMetres;
  readonly propertyClass: string;
  readonly clamps: readonly string[];
  readonly bearing?: Bearing;
}): Result<GreaseEffect, GreaseRefusal> {
  const { thread, torque, propertyClass, clamps } = bolt;
  if (!isPropertyClass(propertyClass)) {
    return refuse<PropertyClassUnknown>({ code: 'property-class-unknown', propertyClass });
  }
  if (clamps.length === 0) return materialNotComputed('unknown');
  const unfit = clamps.find((material) => !isComputed(material));
  if (unfit !== undefined) return materialNotComputed(unfit);
  const bearing = bolt.bearing ?? socketHeadBearing(thread.diameter);
  if (bearing === undefined) return refuse<BearingImpossible>({ code: 'bearing-impossible' });

  const friction = frictionByMaterial[strengthOf(propertyClass, thread.diameter).material];
  const at = (coefficient: number) =>
    preloadFrom({
      thread,
      torque,
      ...bearing,
      frictionThread: coefficient,
      frictionHead: coefficient,
    });
  const strength = proofLoad(thread, propertyClass);
  const dry = rangeOver(friction.dry, at, strength);
  if (!dry.ok) return dry;
  const greased = rangeOver(friction.greased, at, strength);
  if (!greased.ok) return greased;
  const [dryMiddle, greasedMiddle] = [at(middleOf(friction.dry)), at(middleOf(friction.greased))];
  if (!dryMiddle.ok) return dryMiddle;
  if (!greasedMiddle.ok) return greasedMiddle;
  return ok({
    dry: dry.value,
    greased: greased.value,
    gain: greasedMiddle.value / dryMiddle.value,
    proofLoad: strength,
  });
}

export type PropertyClassUnknown = {
  readonly code: 'property-class-unknown';
  readonly propertyClass: string;
};
export type GreaseRefusal = PropertyClassUnknown | PreloadRefusal;

function rangeOver(
  { low, high }: FrictionRange,
  preloadAt: (coefficient: number) => Result<Newtons, PreloadRefusal>,
  strength: Newtons,
): Result<PreloadRange, PreloadRefusal> {
  const most = preloadAt(low);
  if (!most.ok) return most;
  const least = preloadAt(high);
  if (!least.ok) return least;
  return ok({
    low: least.value,
    high: most.value,
    lowShare: least.value / strength,
    highShare: most.value / strength,
  });
}

function middleOf({ low, high }: FrictionRange): number {
  return (low + high) / 2;
}
