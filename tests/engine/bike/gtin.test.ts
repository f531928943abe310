import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gtinCheckDigit, isGtin } from '../../../src/engine/bike';

test.each<[situation: string, text: string]>([
  ['nothing', ''],
  ['letters', 'ABCDEFGH'],
  ['nine digits', '123456789'],
  ['fifteen digits', '123456789012345'],
  ['a space inside', '6291041 500213'],
  ['digits of another script', '٦٢٩١٠٤١٥٠٠٢١٣'],
])('[K4] %s is no article number', (_, text) => {
  expect(isGtin(text)).toBe(false);
});

const bodies = fc
  .constantFrom(7, 11, 12, 13)
  .chain((length) => fc.array(fc.nat({ max: 9 }), { minLength: length, maxLength: length }));

test('[K4] every body with its check digit is right, and any single wrong digit is found', () => {
  fc.assert(
    fc.property(bodies, fc.nat(), fc.integer({ min: 1, max: 9 }), (digits, where, by) => {
      const body = digits.join('');
      const whole = [...digits, gtinCheckDigit(body)];
      expect(isGtin(whole.join(''))).toBe(true);
      const index = where % whole.length;
      whole[index] = ((whole[index] ?? 0) + by) % 10;
      expect(isGtin(whole.join(''))).toBe(false);
    }),
    { seed: 2201 },
  );
});
