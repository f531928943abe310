/** Which figure to trust, and whether it may be worked to at all. */

import { ok, type Result, refuse } from '../base';
import {
  type Figure,
  type FigureSource,
  type FigureSourceKind,
  figureSourceKinds,
} from './figure.schema';

/** How far a source is trusted: 4 on the part, 3 in the maker's document, 2 approved by the shop, 1 a usual range. */
export function figureTrust(source: FigureSource): number {
  return (
    figureSourceKinds.length - figureSourceKinds.indexOf(source.kind satisfies FigureSourceKind)
  );
}

/** The most trusted first; figures of one kind of source keep their order. */
export function byTrust(figures: readonly Figure[]): readonly Figure[] {
  return [...figures].sort((a, b) => figureTrust(b.source) - figureTrust(a.source));
}

/** A figure someone may finish a joint on. Refuses a usual range that no named person has accepted. */
export function usableFigure(figure: Figure): Result<Figure, UsualRangeNotAccepted> {
  const { source } = figure;
  if (source.kind === 'usual' && source.acceptedBy === undefined) {
    return refuse<UsualRangeNotAccepted>({ code: 'usual-range-not-accepted' });
  }
  return ok(figure);
}

export type UsualRangeNotAccepted = { readonly code: 'usual-range-not-accepted' };
