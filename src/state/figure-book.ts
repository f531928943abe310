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
  rows: readonly Omit<KnownFigure, 'id'>[],
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

/** What is printed on the same joint of other models, the commonest first. */
export function printedElsewhere(rows: readonly KnownFigure[], joint: string): readonly Figure[] {
  const seen = new Map<string, { readonly figure: Figure; readonly times: number }>();
  for (const row of rows) {
    const { source } = row.figure;
    if (row.joint !== joint || source.kind !== 'part') continue;
    const times = (seen.get(asWritten(source.printed))?.times ?? 0) + 1;
    seen.set(asWritten(source.printed), { figure: row.figure, times });
  }
  const markings = [...seen.entries()].sort(
    ([one, { times: often }], [other, { times: seldom }]) =>
      seldom - often || (one < other ? -1 : 1),
  );
  return markings.map(([, { figure }]) => figure);
}

function asWritten(name: string): string {
  return name.trim().toLowerCase().replaceAll(/\s+/g, ' ').replaceAll('|', '/');
}
