/** In which order the bolts of a joint are brought up, so that it closes evenly. */

import type { Layout } from './layout.schema';

/**
 * Bolt numbers from 1, opposite ones in turn. Bolts of a ring or rectangle are numbered round it: four go 1-3-2-4, six
 * 1-4-2-5-3-6, eight 1-5-3-7-2-6-4-8 (cross pattern of ASME PCC-1, from memory). A line goes from its middle outwards by
 * turns; a pair alternates, and of opposed cups the fixed one, number 1, goes home first (common practice, no source).
 */
export function tighteningOrder({ shape, bolts }: Layout): readonly number[] {
  switch (shape) {
    case 'pair':
    case 'opposed':
      return inTurn(bolts);
    case 'line':
      return fromTheMiddle(bolts);
    case 'rectangle':
    case 'ring':
      return crosswise(bolts);
  }
}

function inTurn(bolts: number): readonly number[] {
  return Array.from({ length: bolts }, (_, index) => index + 1);
}

function fromTheMiddle(bolts: number): readonly number[] {
  const middle = (bolts + 1) / 2;
  return [...inTurn(bolts)].sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b);
}

/**
 * An even ring goes by opposite pairs, and where it has quarters by pairs at right angles; an odd ring goes by the star that
 * steps just less than half-way round, which meets every bolt once because that step and an odd count share no factor.
 */
function crosswise(bolts: number): readonly number[] {
  if (bolts % 2 === 1) {
    const step = (bolts - 1) / 2;
    return inTurn(bolts).map((turn) => 1 + (((turn - 1) * step) % bolts));
  }
  const half = bolts / 2;
  if (bolts % 4 !== 0) return startsWithin(half).flatMap((start) => [start, start + half]);
  const quarter = half / 2;
  return startsWithin(quarter).flatMap((start) => [
    start,
    start + half,
    start + quarter,
    start + quarter + half,
  ]);
}

/** Up to three neighbours simply follow each other; more are spread: the odd ones first, then the even ones. */
function startsWithin(count: number): readonly number[] {
  const starts = inTurn(count);
  if (count <= 3) return starts;
  return [
    ...starts.filter((start) => start % 2 === 1),
    ...starts.filter((start) => start % 2 === 0),
  ];
}
