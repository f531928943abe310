/** The side of the front brake lever, by market. */

import { describe, expect, test } from 'vitest';
import { leverSide, type MarketId } from '../../../src/engine/market';
import { marketSeeds } from '../../support/market-seeds';

describe('leverSide', () => {
  test.each(marketSeeds)('[R6] $id: the data and the program name the same side', (rules) => {
    expect(leverSide(rules)).toBe(leverSide(rules.id));
  });

  test('[R1] the data of a market decides, not its id', () => {
    const [first] = marketSeeds;
    expect(first && leverSide({ ...first, frontBrakeLever: 'left' })).toBe('left');
    expect(first && leverSide({ ...first, frontBrakeLever: 'right' })).toBe('right');
  });

  test('[R1] a market that does not exist is a bug', () => {
    expect(() => leverSide('atlantis' as MarketId)).toThrow('no such market');
  });
});
