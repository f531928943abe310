/** What a bike must carry when it is sold in a market, and whether its description shows it. */

import { assert } from '../base';
import type { BikeKind, Extra } from '../bike';
import { knownMarkets, marketIdFrom } from './known-markets';
import type { Fitting, MarketId, MarketRules } from './market.schema';

/** The part of a bike's description that this asks about. */
export interface BikeAtSale {
  readonly kind?: string | undefined;
  readonly extras: readonly string[];
  readonly front?: { readonly brake: string } | undefined;
  readonly rear?: { readonly brake: string } | undefined;
}

export interface FittingAtSale {
  readonly fitting: Fitting;
  readonly required: true;
  /** Whether the description shows it; absent when no description can (a marking, the instructions). */
  readonly shown?: boolean;
  readonly source: string;
  readonly date: string;
}

/**
 * What the market asks of this bike at sale, each with its source and date. Not legal advice: it does not replace the
 * law's own text, and the maker's instructions may ask for more.
 */
export function fittingsAtSale(
  market: MarketRules | MarketId,
  bike: BikeAtSale,
): readonly FittingAtSale[] {
  const asked = rowsOf(market).filter(({ fitting }) => !hasNoPlaceOn(bike, fitting));
  return asked.map(({ fitting, source, date }) => {
    const shown = isShown(bike, fitting);
    return { fitting, required: true, ...(shown !== undefined && { shown }), source, date };
  });
}

function rowsOf(market: MarketRules | MarketId): MarketRules['fittings'] {
  if (typeof market !== 'string') return market.fittings;
  const id = marketIdFrom(market);
  assert(id.ok, `no such market: ${market}`);
  const { fittings, source, date } = knownMarkets[id.value];
  return fittings.map((fitting) => ({ fitting, source, date }));
}

/** A balance bike has no pedals, and is sold as a toy (from memory). */
const noPlaceOnBalanceBikes: readonly Fitting[] = ['pedal-reflectors', 'two-brakes'];

function hasNoPlaceOn(bike: BikeAtSale, fitting: Fitting): boolean {
  return bike.kind === ('balance' satisfies BikeKind) && noPlaceOnBalanceBikes.includes(fitting);
}

const extrasByFitting: Readonly<Partial<Record<Fitting, readonly Extra[]>>> = {
  bell: ['bell'],
  'front-reflector': ['reflectors'],
  'rear-reflector': ['reflectors'],
  'side-reflectors': ['reflectors'],
  'pedal-reflectors': ['reflectors'],
  'front-lamp': ['dynamo-lights', 'battery-lights', 'motor-lights'],
  'rear-lamp': ['dynamo-lights', 'battery-lights', 'motor-lights'],
};

function isShown({ extras, front, rear }: BikeAtSale, fitting: Fitting): boolean | undefined {
  if (fitting === 'two-brakes') {
    return front && rear && front.brake !== 'none' && rear.brake !== 'none';
  }
  return extrasByFitting[fitting]?.some((extra) => extras.includes(extra));
}
