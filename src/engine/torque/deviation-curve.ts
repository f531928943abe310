/** How a wrench's deviation runs along its scale: one band by its class, or a line between the points of its certificate. */

import { assert, compareNumbers } from '../base';
import { newtonMetresFrom } from '../units';
import { classDeviation, type RatedByClass } from './class-deviation';
import type { Certificate, CertificatePoint } from './wrench.schema';

export type Rated = RatedByClass & { readonly certificate?: Certificate | undefined };

/** Signed fractions: the deviation (indicated − true) / true lies somewhere between them. */
export type DeviationBand = { readonly low: number; readonly high: number };

/** Between two torques at the wrench, N·m, the band runs straight from one end to the other. */
export type Stretch = {
  readonly from: number;
  readonly to: number;
  readonly atFrom: DeviationBand;
  readonly atTo: DeviationBand;
};

type Knot = { readonly torque: number; readonly band: DeviationBand };

/** From zero to infinity without a gap; beyond a certificate's end points the band of the end is held. */
export function stretchesOf(wrench: Rated): readonly Stretch[] {
  const knots = knotsOf(wrench);
  const around = [...knots.slice(0, 1), ...knots, ...knots.slice(-1)];
  const stretches: Stretch[] = [];
  for (const [index, { torque, band }] of around.entries()) {
    const next = around[index + 1];
    if (next === undefined) break;
    const from = index === 0 ? 0 : torque;
    const to = index === knots.length ? Infinity : next.torque;
    if (to > from) stretches.push({ from, to, atFrom: band, atTo: next.band });
  }
  return stretches;
}

function bandOn({ from, to, atFrom, atTo }: Stretch, torque: number): DeviationBand {
  if (to === Infinity || from === 0) return atFrom;
  const share = Math.min(Math.max((torque - from) / (to - from), 0), 1);
  const between = (a: number, b: number) => (a === b ? a : a * (1 - share) + b * share);
  return { low: between(atFrom.low, atTo.low), high: between(atFrom.high, atTo.high) };
}

/** The band where a wrench indicates or is set to a torque, N·m. */
export function bandAt(stretches: readonly Stretch[], torque: number): DeviationBand {
  const stretch = stretches.find(({ to }) => torque <= to) ?? stretches.at(-1);
  assert(stretch !== undefined, 'a deviation curve has a stretch');
  return bandOn(stretch, torque);
}

/** A certificate's one deviation is ± it, and never narrows what a point says. */
function knotsOf(wrench: Rated): readonly Knot[] {
  const { certificate, unit } = wrench;
  if (certificate === undefined) return [{ torque: 0, band: plusMinus(classDeviation(wrench)) }];
  const { points = [], deviation } = certificate;
  const least = deviation === undefined ? undefined : plusMinus(deviation);
  if (points.length === 0) return [{ torque: 0, band: least ?? plusMinus(0) }];
  const byTorque = new Map<number, DeviationBand>();
  for (const point of points) {
    const torque = newtonMetresFrom(point.at, unit);
    byTorque.set(torque, hull(hull(bandOf(point), byTorque.get(torque)), least));
  }
  return [...byTorque]
    .map(([torque, band]) => ({ torque, band }))
    .sort((a, b) => compareNumbers(a.torque, b.torque));
}

/** At −1 a wrench would show nothing at any torque. */
const LEAST = -0.99;

function bandOf({ deviation, uncertainty = 0 }: CertificatePoint): DeviationBand {
  return { low: Math.max(deviation - uncertainty, LEAST), high: deviation + uncertainty };
}

export function plusMinus(deviation: number): DeviationBand {
  return { low: 0 - deviation, high: deviation };
}

/** The narrowest band that holds both. */
export function hull(band: DeviationBand, other: DeviationBand | undefined): DeviationBand {
  if (other === undefined) return band;
  return { low: Math.min(band.low, other.low), high: Math.max(band.high, other.high) };
}
