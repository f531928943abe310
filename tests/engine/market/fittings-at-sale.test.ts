/** What is asked for at sale, and what the description of the bike shows. */

import { describe, expect, test } from 'vitest';
import { fittingsAtSale, type MarketId } from '../../../src/engine/market';
import { marketSeeds } from '../../support/market-seeds';

const bike = {
  kind: 'town',
  extras: ['bell', 'reflectors', 'dynamo-lights'],
  front: { brake: 'dual-pivot' },
  rear: { brake: 'coaster' },
};

const named = (rows: ReturnType<typeof fittingsAtSale>) => rows.map(({ fitting }) => fitting);

describe('fittingsAtSale', () => {
  test.each(marketSeeds)('[R6] $id: the data and the program ask for the same', (rules) => {
    expect(named(fittingsAtSale(rules.id, bike)).sort()).toEqual(
      named(fittingsAtSale(rules, bike)).sort(),
    );
  });

  test.each(marketSeeds)('[R2] $id: each fitting is required and has source and date', (rules) => {
    for (const row of [...fittingsAtSale(rules, bike), ...fittingsAtSale(rules.id, bike)]) {
      expect(row).toMatchObject({
        required: true,
        date: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
      });
      expect(row.source).not.toBe('');
    }
  });

  test('[R4] a full bike shows everything but what no description can show', () => {
    const us = fittingsAtSale('us', bike);
    expect(us.find(({ fitting }) => fitting === 'instructions')).not.toHaveProperty('shown');
    expect(fittingsAtSale('de', bike).every(({ shown }) => shown)).toBe(true);
  });

  test.each<[situation: string, changed: object, market: MarketId, fitting: string]>([
    ['no bell', { extras: ['reflectors'] }, 'gb', 'bell'],
    ['no lamps', { extras: ['bell', 'reflectors'] }, 'de', 'front-lamp'],
    ['no reflectors', { extras: ['bell'] }, 'nl', 'side-reflectors'],
    ['one brake only', { rear: { brake: 'none' } }, 'jp', 'two-brakes'],
  ])('[R4] %s shows as missing', (_, changed, market, fitting) => {
    const rows = fittingsAtSale(market, { ...bike, ...changed });
    expect(rows.find((row) => row.fitting === fitting)?.shown).toBe(false);
  });

  test('[R4] battery lamps are lamps; brakes that were not described are not judged', () => {
    const rows = fittingsAtSale('jp', { extras: ['bell', 'battery-lights'] });
    expect(rows.find(({ fitting }) => fitting === 'front-lamp')?.shown).toBe(true);
    expect(rows.find(({ fitting }) => fitting === 'two-brakes')).not.toHaveProperty('shown');
  });

  test('[R4] lamps fed by the motor’s battery are lamps', () => {
    const rows = fittingsAtSale('de', { ...bike, extras: ['bell', 'reflectors', 'motor-lights'] });
    expect(rows.every(({ shown }) => shown)).toBe(true);
  });

  test('[R5] a balance bike is not asked for pedal reflectors or two brakes', () => {
    const asked = named(fittingsAtSale('gb', { ...bike, kind: 'balance' }));
    expect(asked).toContain('bell');
    expect(asked).not.toContain('pedal-reflectors');
    expect(asked).not.toContain('two-brakes');
  });

  test('[R2] a market that does not exist is a bug', () => {
    expect(() => fittingsAtSale('atlantis' as MarketId, bike)).toThrow('no such market');
  });
});
