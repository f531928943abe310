/** Guard bands of measured values against published examples. */

import { expect, test } from 'vitest';
import { type Judgement, judgeMeasure } from '../../src/engine/inspection';

type Limits = { min?: number; max?: number };

test.each<
  [situation: string, Limits, value: number, uncertainty: number, Judgement, source: string]
>([
  [
    'a micrometer off by 0.0017 mm, 0.003 allowed',
    { min: -0.003, max: 0.003 },
    0.0017,
    0.001,
    'inside',
    'a published ILAC-G8 example: acceptance limit 0.002 mm',
  ],
  [
    'the same micrometer exactly on the acceptance limit',
    { min: -0.003, max: 0.003 },
    0.002,
    0.001,
    'inside',
    'the same example',
  ],
  [
    'the same micrometer off by 0.0025 mm',
    { min: -0.003, max: 0.003 },
    0.0025,
    0.001,
    'undecided',
    'the same example: not accepted',
  ],
  [
    'rim runout of 2 mm exactly, none stated',
    { max: 2 },
    2,
    0,
    'inside',
    'ISO 4210-2 4.10.1 limit (from memory)',
  ],
])('[N4] %s', (_, limit, value, uncertainty, judgement) => {
  expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
});

test.each<
  [situation: string, Limits, value: number, uncertainty: number, Judgement, source: string]
>([
  [
    'a value in the guard band above the limit',
    { max: 100 },
    101.9,
    2,
    'undecided',
    'ISO 14253-1: proving non-conformity needs the limit exceeded by the uncertainty',
  ],
  ['a value clear of the guard band', { max: 100 }, 102.1, 2, 'outside', 'ISO 14253-1'],
  // The guard factor for 99.9 % is 3.0902 standard uncertainties of 2 %: 100 / (1 − 3.0902 × 0.02) = 106.588.
  [
    'a speed of 107 where 100 is allowed',
    { max: 100 },
    107,
    107 * 0.02 * 3.0902,
    'outside',
    'JCGM 106:2012, guarded rejection of speeds (from memory, recomputed)',
  ],
  [
    'a speed of 106',
    { max: 100 },
    106,
    106 * 0.02 * 3.0902,
    'undecided',
    'JCGM 106:2012, guarded rejection of speeds (from memory, recomputed)',
  ],
])('[N5] %s', (_, limit, value, uncertainty, judgement) => {
  expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
});
