/** market: what the place of sale asks for: which lever works which brake, and what the bike must carry. */

export { type BikeAtSale, type FittingAtSale, fittingsAtSale } from './fittings-at-sale';
export { type MarketUnknown, marketIdFrom } from './known-markets';
export { leverSide } from './lever-side';
export {
  type Fitting,
  fittings,
  type Hand,
  hands,
  type MarketId,
  type MarketRules,
  marketIds,
  marketSchema,
} from './market.schema';
