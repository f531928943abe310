/** The load check: within, at and over the limit. */

import { describe, expect, test } from 'vitest';
import { loadCheck } from '../../../src/engine/fit';
import { kilograms } from '../../../src/engine/units';

const kg = kilograms;

describe('loadCheck', () => {
  test('[F5] counts rider, luggage and bike, and says what is left', () => {
    const asked = { limit: kg(130), rider: kg(85), luggage: kg(15), bike: kg(14.5) };
    expect(loadCheck(asked)).toEqual({
      ok: true,
      value: { total: 114.5, limit: 130, left: 15.5, notCounted: [] },
    });
  });

  test('[F5] the limit itself is allowed, a sum of decimals included; a gram more is refused', () => {
    const sum = { limit: kg(100.3), rider: kg(100.1), luggage: kg(0.1), bike: kg(0.1) };
    expect(loadCheck(sum)).toMatchObject({ ok: true, value: { left: 0 } });
    expect(loadCheck({ ...sum, rider: kg(100.101) })).toEqual({
      ok: false,
      refusal: { code: 'load-over-limit', total: 100.301, limit: 100.3, over: 0.001 },
    });
  });

  test('[F5] weights that were not given are named', () => {
    const answer = loadCheck({ limit: kg(100), rider: kg(80) });
    expect(answer).toMatchObject({ ok: true, value: { notCounted: ['luggage', 'bike'] } });
  });

  test('[F6] no limit, no answer', () => {
    expect(loadCheck({ rider: kg(60), bike: kg(12) })).toEqual({
      ok: false,
      refusal: { code: 'load-limit-unknown', total: 72 },
    });
  });
});
