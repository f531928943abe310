/** The names of markets. */

import { describe, expect, test } from 'vitest';
import { marketIdFrom, marketIds } from '../../../src/engine/market';

describe('marketIdFrom', () => {
  test.each<[text: string, id: string]>([
    ['gb', 'gb'],
    ['UK', 'gb'],
    [' De ', 'de'],
    ['JP', 'jp'],
  ])('[R7] %j is %s', (text, id) => {
    expect(marketIdFrom(text)).toEqual({ ok: true, value: id });
  });

  test('[R7] an unknown market is refused with the known ones', () => {
    expect(marketIdFrom('Atlantis')).toEqual({
      ok: false,
      refusal: { code: 'market-unknown', text: 'Atlantis', known: marketIds },
    });
  });
});
