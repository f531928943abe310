/** Which hand works the front brake. */

import { assert } from '../base';
import { knownMarkets, marketIdFrom } from './known-markets';
import type { Hand, MarketId, MarketRules } from './market.schema';

/**
 * The hand whose lever works the front brake where the bike is sold. Not legal advice; a customer's own order or the
 * maker's instructions may differ. Source: the row of the market; 16 CFR 1512.5 and national law or custom.
 */
export function leverSide(market: MarketRules | MarketId): Hand {
  if (typeof market !== 'string') return market.frontBrakeLever;
  const id = marketIdFrom(market);
  assert(id.ok, `no such market: ${market}`);
  return knownMarkets[id.value].frontBrakeLever;
}
