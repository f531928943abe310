/** Figures of one joint side by side. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareFigures, type Figure, type FigureSource } from '../../../src/engine/torque';
import { newtonMetres, newtonMetresFrom } from '../../../src/engine/units';

const part: FigureSource = { kind: 'part', printed: '4-6 Nm' };
const document: FigureSource = { kind: 'document', reference: 'Stem manual, page 3' };
const approved: FigureSource = { kind: 'approved', by: 'sam', on: '2026-01-02' };
const usual: FigureSource = { kind: 'usual' };
const accepted: FigureSource = { kind: 'usual', acceptedBy: 'kim' };

function figure(
  source: FigureSource,
  own: { min?: number; max?: number; target?: number },
): Figure {
  const entries = Object.entries(own).map(([name, value]) => [name, newtonMetres(value)]);
  return { source, ...Object.fromEntries(entries) };
}

const standingsOf = (figures: readonly Figure[]) =>
  compareFigures(figures).compared.map(
    ({ figure: { source }, standing }) => `${source.kind} ${standing}`,
  );

describe('compareFigures', () => {
  test('[T32] by trust, the first rules; who approved a value and when is told', () => {
    const onThePart = figure(part, { min: 4, max: 6 });
    const figures = [
      figure(usual, { min: 7, max: 9 }),
      figure(approved, { target: 5 }),
      onThePart,
      figure(document, { max: 8 }),
    ];
    const { compared, rules, contradicted } = compareFigures(figures);
    expect(rules).toBe(onThePart);
    expect(contradicted).toBe(true);
    expect(compared.map(({ trust, standing, usable }) => [trust, standing, usable])).toEqual([
      [4, 'rules', true],
      [3, 'agrees', true],
      [2, 'agrees', true],
      [1, 'contradicts', false],
    ]);
    expect(compared.map((one) => one.approved)).toEqual([
      undefined,
      undefined,
      { by: 'sam', on: '2026-01-02' },
      undefined,
    ]);
  });

  test.each<[situation: string, ruling: object, other: object, standing: string]>([
    ['ranges that touch', { min: 4, max: 6 }, { min: 6, max: 8 }, 'agrees'],
    ['ranges apart', { min: 4, max: 6 }, { min: 6.1, max: 8 }, 'contradicts'],
    ['ranges apart on the other side', { min: 6.1, max: 8 }, { min: 4, max: 6 }, 'contradicts'],
    ['a maximum below a minimum', { max: 5 }, { min: 6 }, 'contradicts'],
    ['a maximum above a range', { max: 5 }, { min: 4, max: 6 }, 'agrees'],
    [
      'two single values alike but for rounding',
      { target: 5 },
      { target: newtonMetresFrom(44, 'lbf·in') },
      'agrees',
    ],
    [
      'two single values that a good wrench may both make',
      { target: 5 },
      { target: 5.4 },
      'agrees',
    ],
    ['two single values apart', { target: 5 }, { target: 5.5 }, 'contradicts'],
    ['a single value under its maximum', { target: 5, max: 5.1 }, { min: 5.15 }, 'contradicts'],
    ['a single value over its minimum', { target: 5, min: 4.9 }, { max: 4.85 }, 'contradicts'],
    ['a figure without a number', { target: 5 }, {}, 'makes no sense'],
    ['a figure that contradicts itself', { target: 5 }, { min: 6, max: 4 }, 'makes no sense'],
  ])('[T32] %s', (_, ruling, other, standing) => {
    expect(standingsOf([figure(document, other), figure(part, ruling)])).toEqual([
      'part rules',
      `document ${standing}`,
    ]);
  });

  test('[T2, T32] a usual range rules only once somebody has accepted it', () => {
    const none = compareFigures([figure(usual, { min: 4, max: 6 })]);
    expect(none).not.toHaveProperty('rules');
    expect(none.compared[0]).toMatchObject({ standing: 'agrees', usable: false });
    const one = compareFigures([figure(accepted, { min: 4, max: 6 })]);
    expect(one.rules).toEqual(figure(accepted, { min: 4, max: 6 }));
  });

  test('[T32] a figure that makes no sense never rules, however trusted', () => {
    expect(standingsOf([figure(part, {}), figure(approved, { target: 5 })])).toEqual([
      'part makes no sense',
      'approved rules',
    ]);
    expect(compareFigures([figure(part, {})])).toEqual({
      compared: [{ figure: { source: part }, trust: 4, standing: 'makes no sense', usable: false }],
      contradicted: false,
    });
    expect(compareFigures([])).toEqual({ compared: [], contradicted: false });
  });

  test('[T32] the order given matters only among sources of one kind', () => {
    const rows = [
      figure(part, { min: 4, max: 6 }),
      figure(document, { target: 5 }),
      figure(approved, { max: 3 }),
      figure(usual, { min: 5, max: 8 }),
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (shuffled) => {
        expect(compareFigures(shuffled)).toEqual(compareFigures(rows));
      }),
    );
    const twice = [figure(part, { min: 4, max: 6 }), figure(part, { min: 7, max: 8 })];
    expect(compareFigures(twice).rules).toBe(twice[0]);
    expect(compareFigures([...twice].reverse()).rules).toBe(twice[1]);
  });
});
