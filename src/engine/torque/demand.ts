/** What a figure demands of a joint: a range, a maximum, a minimum, or a single value. */

import { ok, type Result, refuse } from '../base';
import { type NewtonMetres, newtonMetres } from '../units';
import type { Figure } from './figure.schema';

export type Demand =
  | {
      readonly kind: 'range';
      readonly min: NewtonMetres;
      readonly max: NewtonMetres;
      readonly target: NewtonMetres;
    }
  | { readonly kind: 'maximum'; readonly max: NewtonMetres }
  | { readonly kind: 'minimum'; readonly min: NewtonMetres }
  /** At most one printed limit beside the value. */
  | {
      readonly kind: 'single';
      readonly target: NewtonMetres;
      readonly min?: NewtonMetres;
      readonly max?: NewtonMetres;
    };

type LimitsOfFigure = Pick<Figure, 'min' | 'max' | 'target'>;

/**
 * Sorts a figure by what it demands. The middle of a range is its target when none is given; a range of no width is
 * a single value, and a target that is itself the only limit adds nothing to it. Refuses a figure without any number, and one whose numbers contradict each other.
 */
export function demandOf(figure: LimitsOfFigure): Result<Demand, FigureRefusal> {
  const { min, max, target } = figure;
  if (min === undefined && max === undefined && target === undefined) {
    return refuse<FigureEmpty>({ code: 'figure-empty' });
  }
  if (!isOrdered(figure)) {
    return refuse<FigureContradictsItself>({ code: 'figure-contradicts-itself', ...figure });
  }
  if (min !== undefined && max !== undefined) {
    if (min === max) return ok({ kind: 'single', target: min });
    return ok({ kind: 'range', min, max, target: target ?? newtonMetres((min + max) / 2) });
  }
  if (target !== undefined && target !== min && target !== max) {
    return ok({
      kind: 'single',
      target,
      ...(min === undefined ? {} : { min }),
      ...(max === undefined ? {} : { max }),
    });
  }
  return max === undefined
    ? ok({ kind: 'minimum', min: min as NewtonMetres }) // one of the three is there, and it is neither other
    : ok({ kind: 'maximum', max });
}

export type FigureEmpty = { readonly code: 'figure-empty' };
export type FigureContradictsItself = {
  readonly code: 'figure-contradicts-itself';
} & LimitsOfFigure;
export type FigureRefusal = FigureEmpty | FigureContradictsItself;

/** The torque a joint is brought up towards, before any wrench is chosen. */
export function aimOf(demand: Demand): NewtonMetres {
  if (demand.kind === 'maximum') return demand.max;
  return demand.kind === 'minimum' ? demand.min : demand.target;
}

function isOrdered({ min, target, max }: LimitsOfFigure): boolean {
  const given = [min, target, max].filter((limit) => limit !== undefined);
  return given.every(
    (limit, index) => limit > 0 && Number.isFinite(limit) && limit >= (given[index - 1] ?? 0),
  );
}
