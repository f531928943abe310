/** The little that is known of each market when its data is not at hand. */

import { ok, type Result, refuse } from '../base';
import { type Fitting, type Hand, type MarketId, marketIds } from './market.schema';

export interface KnownMarket {
  readonly frontBrakeLever: Hand;
  readonly fittings: readonly Fitting[];
  readonly source: string;
  readonly date: string;
}

const allReflectors = [
  'front-reflector',
  'rear-reflector',
  'side-reflectors',
  'pedal-reflectors',
] as const satisfies readonly Fitting[];

const date = '2026-11-25';
const fromMemory = 'national road law (from memory)';

/** Not legal advice: summaries of national law, to be verified before anyone relies on them. */
export const knownMarkets: Readonly<Record<MarketId, KnownMarket>> = {
  gb: {
    frontBrakeLever: 'right',
    fittings: ['bell', ...allReflectors, 'two-brakes'],
    source: 'Pedal Bicycles (Safety) Regulations 2010 (summary seen)',
    date,
  },
  us: {
    frontBrakeLever: 'left',
    fittings: [...allReflectors, 'marking', 'instructions'],
    source: '16 CFR 1512.5, 1512.16, 1512.19 (seen in part)',
    date,
  },
  de: {
    frontBrakeLever: 'left',
    fittings: ['bell', 'front-lamp', 'rear-lamp', ...allReflectors, 'two-brakes'],
    source: 'StVZO §§ 63a–67 (seen in part); the lever by custom',
    date,
  },
  fr: {
    frontBrakeLever: 'left',
    fittings: ['bell', ...allReflectors],
    source: fromMemory,
    date,
  },
  nl: {
    frontBrakeLever: 'left',
    fittings: ['bell', ...allReflectors],
    source: fromMemory,
    date,
  },
  au: {
    frontBrakeLever: 'right',
    fittings: ['bell', ...allReflectors, 'two-brakes', 'marking'],
    source: 'AS/NZS 1927 mandatory standard (summary seen)',
    date,
  },
  jp: {
    frontBrakeLever: 'right',
    fittings: ['bell', 'front-lamp', 'rear-reflector', 'two-brakes'],
    source: 'JIS D 9301 (summary seen)',
    date,
  },
};

/** The market that a text names: an ISO 3166 code in any case, and `uk`, which ISO 3166 keeps for Great Britain too. */
export function marketIdFrom(text: string): Result<MarketId, MarketUnknown> {
  const code = text.trim().toLowerCase();
  const id = marketIds.find((known) => known === (code === 'uk' ? 'gb' : code));
  return id ? ok(id) : refuse({ code: 'market-unknown', text, known: marketIds });
}
export type MarketUnknown = {
  readonly code: 'market-unknown';
  readonly text: string;
  readonly known: readonly MarketId[];
};
