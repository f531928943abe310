/** What a figure demands. */

import { describe, expect, test } from 'vitest';
import { aimOf, demandOf } from '../../../src/engine/torque/demand';
import { newtonMetres } from '../../../src/engine/units';

type Numbers = { readonly min?: number; readonly max?: number; readonly target?: number };

function limitsOf(numbers: Numbers) {
  const entries = Object.entries(numbers).map(([name, value]) => [name, value as never]);
  return Object.fromEntries(entries) as Parameters<typeof demandOf>[0];
}

describe('demandOf', () => {
  test.each<[figure: Numbers, demand: object, aim: number]>([
    [{ min: 4, max: 6 }, { kind: 'range', min: 4, max: 6, target: 5 }, 5],
    [{ min: 4, target: 5.5, max: 6 }, { kind: 'range', min: 4, max: 6, target: 5.5 }, 5.5],
    [{ min: 5, max: 5 }, { kind: 'single', target: 5 }, 5],
    [{ target: 5 }, { kind: 'single', target: 5 }, 5],
    [{ target: 5, max: 6 }, { kind: 'single', target: 5, max: 6 }, 5],
    [{ min: 4, target: 5 }, { kind: 'single', target: 5, min: 4 }, 5],
    [{ target: 5, max: 5 }, { kind: 'maximum', max: 5 }, 5],
    [{ min: 5, target: 5 }, { kind: 'minimum', min: 5 }, 5],
    [{ max: 5 }, { kind: 'maximum', max: 5 }, 5],
    [{ min: 5 }, { kind: 'minimum', min: 5 }, 5],
  ])('[T10] %o', (figure, demand, aim) => {
    const read = demandOf(limitsOf(figure));
    expect(read).toEqual({ ok: true, value: demand });
    expect(read.ok && aimOf(read.value)).toBe(aim);
  });

  test('[T3] a figure without a number is refused', () => {
    expect(demandOf({})).toEqual({ ok: false, refusal: { code: 'figure-empty' } });
  });

  test.each<[figure: Numbers]>([
    [{ min: 6, max: 4 }],
    [{ min: 4, target: 3, max: 6 }],
    [{ min: 4, target: 7, max: 6 }],
    [{ target: 5, max: 4 }],
    [{ min: 6, target: 5 }],
    [{ max: 0 }],
    [{ min: -1, max: 5 }],
    [{ target: Number.NaN }],
    [{ max: Number.POSITIVE_INFINITY }],
  ])('[T3] %o contradicts itself', (figure) => {
    expect(demandOf(limitsOf(figure))).toEqual({
      ok: false,
      refusal: { code: 'figure-contradicts-itself', ...figure },
    });
  });

  test('[T3] a source beside the numbers does not matter', () => {
    const figure = { max: newtonMetres(5), source: { kind: 'usual' } };
    expect(demandOf(figure).ok).toBe(true);
  });
});
