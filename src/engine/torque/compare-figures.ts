/** Every figure known for one joint side by side: which one rules, and which ones contradict it. */

import { demandOf } from './demand';
import { figureTrust, usableFigure } from './figure';
import type { Figure } from './figure.schema';
import { printedLimits } from './window';

export const figureStandings = ['rules', 'agrees', 'contradicts', 'makes no sense'] as const;

export type FigureStanding = (typeof figureStandings)[number];

export type ComparedFigure<Known extends Figure = Figure> = {
  readonly figure: Known;
  /** 4 on the part, 3 in the maker's document, 2 approved by the shop, 1 a usual range. */
  readonly trust: number;
  /** Towards the figure that rules; towards the most trusted one as long as none does. */
  readonly standing: FigureStanding;
  /** False for a usual range that nobody has accepted, and for a figure that makes no sense. */
  readonly usable: boolean;
  /** Of a value the shop approved: who, and on which date. */
  readonly approved?: { readonly by: string; readonly on: string };
};

export type FigureComparison<Known extends Figure = Figure> = {
  /** The most trusted first; those of one kind of source keep their order. */
  readonly compared: readonly ComparedFigure<Known>[];
  /** The most trusted figure that may be worked to; absent when there is none. */
  readonly rules?: Known;
  readonly contradicted: boolean;
};

/**
 * Orders the figures of one joint by trust (part, document, approved by the shop, usual range). The first that makes sense
 * and may be worked to rules; another contradicts it when no torque satisfies both. A single value stands for what the best
 * class of wrench may make of it, ±4 % (ISO 6789-1:2017).
 */
export function compareFigures<Known extends Figure>(
  figures: readonly Known[],
): FigureComparison<Known> {
  const ordered = figures
    .map((figure) => ({ figure, trust: figureTrust(figure.source), span: spanOf(figure) }))
    .sort((a, b) => b.trust - a.trust);
  const sensible = ordered.filter(({ span }) => span !== undefined);
  const ruling = sensible.find(({ figure }) => usableFigure(figure).ok);
  const measure = (ruling ?? sensible[0])?.span;
  const compared = ordered.map(({ figure, trust, span }) => ({
    figure,
    trust,
    standing: figure === ruling?.figure ? ('rules' as const) : standingOf(span, measure),
    usable: span !== undefined && usableFigure(figure).ok,
    ...(figure.source.kind === 'approved'
      ? { approved: { by: figure.source.by, on: figure.source.on } }
      : {}),
  }));
  return {
    compared,
    ...(ruling === undefined ? {} : { rules: ruling.figure }),
    contradicted: compared.some(({ standing }) => standing === 'contradicts'),
  };
}

/** N·m: the torques that satisfy a figure. */
type Span = { readonly min: number; readonly max: number };

const FINEST_CLASS = 0.04;

function spanOf(figure: Figure): Span | undefined {
  const demand = demandOf(figure);
  if (!demand.ok) return undefined;
  const { min, max } = printedLimits(demand.value);
  if (demand.value.kind !== 'single') return { min, max };
  const { target } = demand.value;
  return {
    min: Math.max(min, target / (1 + FINEST_CLASS)),
    max: Math.min(max, target / (1 - FINEST_CLASS)),
  };
}

function standingOf(span: Span | undefined, measure: Span | undefined): FigureStanding {
  if (span === undefined || measure === undefined) return 'makes no sense';
  const meets = span.min <= measure.max * (1 + DUST) && measure.min <= span.max * (1 + DUST);
  return meets ? 'agrees' : 'contradicts';
}

/** What converting a limit from its unit may add to it. */
const DUST = 1e-9;
