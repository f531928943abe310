/** How far a wrench may be from the truth, and where a bolt can therefore end. */

import { classDeviation } from './class-deviation';
import { bandAt, type DeviationBand, plusMinus, type Rated, stretchesOf } from './deviation-curve';
import type { Certificate } from './wrench.schema';

/**
 * The largest deviation a wrench may have, as a fraction: from its certificate when there is one, else from its type,
 * class and maximum (ISO 6789-1:2017). Of a certificate's points the worst counts, its expanded uncertainty added.
 */
export function permissibleDeviation(wrench: Rated): number {
  return wrench.certificate === undefined
    ? classDeviation(wrench)
    : certifiedDeviation(wrench.certificate);
}

function certifiedDeviation({ deviation = 0, points = [] }: Certificate): number {
  return Math.max(
    deviation,
    ...points.map((point) => Math.abs(point.deviation) + (point.uncertainty ?? 0)),
  );
}

/**
 * The deviations a wrench may have where it indicates (or is set to) `indicated` N·m, as signed fractions
 * (indicated − true) / true. By its certificate: straight between the points, the end points held beyond them, each widened
 * by its expanded uncertainty; a certificate with one deviation only is ± it, and so is the class (ISO 6789-1:2017) where
 * there is no certificate. Never wider than ± `permissibleDeviation`.
 */
export function deviationAt(wrench: Rated, indicated: number): DeviationBand {
  return bandAt(stretchesOf(wrench), indicated);
}

/** How far a single value may be from the likeliest torque: no more than the class allows, nor than this wrench deviates. */
export function singleValueTolerance(wrench: Rated): number {
  return Math.min(classDeviation(wrench), permissibleDeviation(wrench));
}

/** Deviation of an indicated or set value from the true one, as a signed fraction (ISO 6789-1:2017, from memory). */
export function relativeDeviation(indicated: number, actual: number): number {
  return (indicated - actual) / actual;
}

/** Where the true torque lies when a wrench shows `indicated` and deviates by ± `deviation` at most, or within a band. */
export function deliveredInterval(
  indicated: number,
  deviation: number | DeviationBand,
): { readonly low: number; readonly high: number } {
  const { low, high } = typeof deviation === 'number' ? plusMinus(deviation) : deviation;
  return { low: indicated / (1 + high), high: indicated / (1 + low) };
}

/** The torque that is likeliest: what the middle of the band makes of `indicated`. */
export function likelyTorque(indicated: number, { low, high }: DeviationBand): number {
  return indicated / (1 + (low + high) / 2);
}
