/** The figure book: torque figures the shop knows for a make and model. */

import type { Bike } from '../engine/bike';
import { type Figure, figureTrust } from '../engine/torque';
import type { KnownFigure } from '../storage/contract';

/** One row for each make, model and joint, however they were typed. */
export function figureKey(make: string, model: string, joint: string): string {
  return [make, model, joint].map(asWritten).join('|');
}

/** The figures for this bike by joint; of two for the same joint the more trusted. */
export function knownFigures(
  rows: readonly KnownFigure[],
  bike: Pick<Bike, 'make' | 'model'>,
): Readonly<Record<string, Figure>> {
  const figures: Record<string, Figure> = {};
  for (const { make, model, joint, figure } of rows) {
    if (asWritten(make) !== asWritten(bike.make) || asWritten(model) !== asWritten(bike.model))
      continue;
    const held = figures[joint];
    if (held === undefined || figureTrust(figure.source) > figureTrust(held.source))
      figures[joint] = figure;
  }
  return figures;
}

function asWritten(name: string): string {
  return name.trim().toLowerCase().replaceAll(/\s+/g, ' ').replaceAll('|', '/');
}
