/** The rounds over a joint's bolts: rising to the set point, then once round to find what has settled. */

import { type NewtonMetres, newtonMetres } from '../units';
import { aimOf, demandOf } from './demand';
import type { Figure } from './figure.schema';
import type { Layout } from './layout.schema';
import { tighteningOrder } from './tightening-order';

export type Pass = {
  /** From 1 to `of`. */
  readonly pass: number;
  readonly of: number;
  readonly kind: 'rising' | 'full' | 'last round';
  /** Share of the set point, 0 to 1. */
  readonly fraction: number;
  /** N·m, a guide for a rising pass; a full pass has the wrench's own set point instead. */
  readonly about?: NewtonMetres;
  readonly order: readonly number[];
};

/**
 * One bolt is tightened at once; two are brought to half and then to the set point by turns; three or more to half, to the
 * set point, then once round at the set point, because each bolt that tightens relieves its neighbours. Opposed cups go home
 * one after the other, and each is tried again once both are home. Rising passes and a last round after ASME PCC-1 (from
 * memory); half for the first, and opposed cups, are common practice, no source.
 */
export function tighteningPasses(
  figure: Pick<Figure, 'min' | 'max' | 'target'>,
  layout: Layout,
): readonly Pass[] {
  const kinds = kindsFor(layout);
  const demand = demandOf(figure);
  return kinds.map((kind, index) => ({
    pass: index + 1,
    of: kinds.length,
    kind,
    fraction: kind === 'rising' ? RISING : 1,
    ...(kind === 'rising' && demand.ok
      ? { about: newtonMetres(aimOf(demand.value) * RISING) }
      : {}),
    order: kind === 'last round' ? onceRound(layout) : tighteningOrder(layout),
  }));
}

const RISING = 0.5;

function kindsFor({ shape, bolts }: Layout): readonly Pass['kind'][] {
  if (bolts === 1) return ['full'];
  if (shape === 'opposed') return ['full', 'last round'];
  return bolts === 2 ? ['rising', 'full'] : ['rising', 'full', 'last round'];
}

/** A ring or rectangle is gone round from bolt to neighbouring bolt; a line keeps its order. */
function onceRound(layout: Layout): readonly number[] {
  if (layout.shape === 'line') return tighteningOrder(layout);
  return [...tighteningOrder(layout)].sort((a, b) => a - b);
}
