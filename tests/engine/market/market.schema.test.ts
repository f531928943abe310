/** The shape of market data. */

import { describe, expect, test } from 'vitest';
import { type MarketRules, marketIds, marketSchema } from '../../../src/engine/market';
import { marketSeeds } from '../../support/market-seeds';

const [valid] = marketSeeds as [MarketRules];

describe('marketSchema', () => {
  test('[R6] every known market has its data, and each fitting once', () => {
    expect(marketSeeds.map(({ id }) => id).sort()).toEqual([...marketIds].sort());
    for (const { fittings } of marketSeeds) {
      expect(new Set(fittings.map(({ fitting }) => fitting)).size).toBe(fittings.length);
    }
  });

  test.each<[situation: string, changed: object]>([
    ['no word that it is not legal advice', { notLegalAdvice: false }],
    ['no source for the lever', { leverSource: '' }],
    ['a date that is none', { leverDate: 'last year' }],
    ['a third hand', { frontBrakeLever: 'middle' }],
    ['a fitting without a source', { fittings: [{ fitting: 'bell', date: '2026-11-25' }] }],
    ['a fitting nobody knows', { fittings: [{ ...valid.fittings[0], fitting: 'horn' }] }],
  ])('[R3] refuses %s', (_, changed) => {
    expect(marketSchema.safeParse({ ...valid, ...changed }).success).toBe(false);
  });

  test('[R3] an order the other way round is only possible where the data says so', () => {
    const { reversibleOnOrder: _, ...silent } = valid;
    expect(marketSchema.parse(silent).reversibleOnOrder).toBe(false);
  });
});
