/** The settings a wrench has: from its lowest value upwards in whole increments, in its own unit. */

import { type NewtonMetres, newtonMetresFrom, newtonMetresTo } from '../units';
import type { Wrench } from './wrench.schema';

export type Scale = Pick<Wrench, 'lowest' | 'highest' | 'increment' | 'unit'>;

/** One setting: the number on the wrench and the torque it stands for. */
export type Setting = { readonly onScale: number; readonly torque: NewtonMetres };

/** Far below any increment, far above the dust of binary fractions. */
const DUST = 1e-9;

/** The settings just below and just above a torque, or the end of the scale when it lies beyond; low first. */
export function settingsAround(scale: Scale, torque: number): readonly Setting[] {
  const steps =
    (newtonMetresTo(torque as NewtonMetres, scale.unit) - scale.lowest) / scale.increment;
  const last = Math.floor((scale.highest - scale.lowest) / scale.increment + DUST);
  const below = clamp(Math.floor(steps + DUST), last);
  const above = clamp(Math.ceil(steps - DUST), last);
  return (below === above ? [below] : [below, above]).map((step) => settingAt(scale, step));
}

function settingAt(scale: Scale, step: number): Setting {
  const onScale = Number((scale.lowest + step * scale.increment).toFixed(9));
  return { onScale, torque: newtonMetresFrom(onScale, scale.unit) };
}

function clamp(step: number, last: number): number {
  return Math.min(Math.max(step, 0), last);
}

/** Where a setting stands on the scale: 0 at its lowest, 1 at its highest; a preset tool is always in the middle. */
export function positionOnScale({ lowest, highest }: Scale, onScale: number): number {
  return highest > lowest ? (onScale - lowest) / (highest - lowest) : 0.5;
}
