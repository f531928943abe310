/** Figures that meet in one value, as converted from two units. */

import { describe, expect, test } from 'vitest';
import { compareFigures, type Figure, type FigureSource } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';

const part: FigureSource = { kind: 'part', printed: '5 Nm' };
const document: FigureSource = { kind: 'document', reference: 'Stem manual, page 3' };

const least = (value: number, source: FigureSource): Figure => ({
  min: newtonMetres(value),
  source,
});
const most = (value: number, source: FigureSource): Figure => ({
  max: newtonMetres(value),
  source,
});

describe('compareFigures', () => {
  // what a conversion adds is far below a millionth of the figure; what a printer meant is above
  test.each<[situation: string, figures: readonly Figure[], contradicted: boolean]>([
    ['at least and at most the same', [least(5, part), most(5, document)], false],
    ['at most and at least the same', [most(5, part), least(5, document)], false],
    ['a hair apart by conversion', [least(5 + 2e-9, part), most(5, document)], false],
    ['the same, the other trusted', [most(5, part), least(5 + 2e-9, document)], false],
    ['a millionth apart', [least(5.000005, part), most(5, document)], true],
    ['the same, the other trusted', [most(5, part), least(5.000005, document)], true],
  ])('[T32] %s', (_, figures, contradicted) => {
    expect(compareFigures(figures).contradicted).toBe(contradicted);
  });
});
