/** Lever sides and fittings at sale against national rules. None of this is legal advice. */

import { describe, expect, test } from 'vitest';
import { fittingsAtSale, leverSide, type MarketId } from '../../src/engine/market';
import { marketSeeds } from '../support/market-seeds';

describe('the front brake lever', () => {
  test.each<[market: MarketId, side: string, byLaw: boolean, source: string]>([
    ['gb', 'right', true, 'Pedal Bicycles (Safety) Regulations 2010, summary'],
    ['us', 'left', true, '16 CFR 1512.5, reversible on an individual order'],
    ['de', 'left', false, 'custom, no source'],
    ['fr', 'left', false, 'custom, no source'],
    ['nl', 'left', false, 'custom, no source'],
    ['au', 'right', true, 'AS/NZS 1927 mandatory standard, summary'],
    ['jp', 'right', false, 'JIS D 9301, summary'],
  ])('[R1] %s: %s, by law %s (%s)', (market, side, byLaw) => {
    const rules = marketSeeds.find(({ id }) => id === market);
    expect(leverSide(market)).toBe(side);
    expect(rules).toMatchObject({ frontBrakeLever: side, leverByLaw: byLaw });
    expect(rules?.reversibleOnOrder).toBe(market === 'us');
  });
});

describe('fittings at sale', () => {
  const reflectors = ['front-reflector', 'rear-reflector', 'side-reflectors', 'pedal-reflectors'];
  test.each<[market: MarketId, fittings: string[], source: string]>([
    [
      'gb',
      ['bell', ...reflectors, 'two-brakes'],
      'Pedal Bicycles (Safety) Regulations 2010, summary',
    ],
    ['us', [...reflectors, 'marking', 'instructions'], '16 CFR 1512.16, 1512.19'],
    [
      'de',
      ['bell', 'front-lamp', 'rear-lamp', ...reflectors, 'two-brakes'],
      'StVZO §§ 63a–67, in part',
    ],
    ['fr', ['bell', ...reflectors], 'national road law, from memory'],
    ['nl', ['bell', ...reflectors], 'national road law, from memory'],
    ['au', ['bell', ...reflectors, 'two-brakes', 'marking'], 'AS/NZS 1927, summary'],
    ['jp', ['bell', 'front-lamp', 'rear-reflector', 'two-brakes'], 'JIS D 9301, summary'],
  ])('[R2] %s asks for %j (%s)', (market, fittings) => {
    const asked = fittingsAtSale(market, { extras: [] });
    expect(asked.map(({ fitting }) => fitting).sort()).toEqual([...fittings].sort());
  });
});
