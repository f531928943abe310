/** The market data that the app is born with, read and parsed. */

import { readdirSync, readFileSync } from 'node:fs';
import { type MarketRules, marketSchema } from '../../src/engine/market';

const folder = new URL('../../seeds/markets/', import.meta.url);

export const marketSeeds: readonly MarketRules[] = readdirSync(folder)
  .sort()
  .map((name) => marketSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))));
