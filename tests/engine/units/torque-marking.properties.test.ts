/** Markings made up from every part a maker may print, against the numbers they were made from. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  newtonMetres,
  newtonMetresFrom,
  newtonMetresTo,
  parseTorqueMarking,
  type TorqueUnit,
} from '../../../src/engine/units';

/** Common practice, no source. */
const spellings: Readonly<Record<TorqueUnit, readonly string[]>> = {
  N·m: ['Nm', 'N·m', 'N.m', 'N-m', 'NM', 'newton metres', 'Newton-meter'],
  lbf·in: ['in-lb', 'in·lbs', 'IN.LBS.', 'lbf·in', 'inch pounds', 'in/lb'],
  lbf·ft: ['ft-lb', 'ft.lbs', 'lbf·ft', 'foot-pounds', 'FT LB'],
  kgf·cm: ['kgf·cm', 'kgf-cm', 'kg.cm', 'kgcm'],
  kgf·m: ['kgf·m', 'kgf-m', 'mkp'],
};

const unit = fc.constantFrom<TorqueUnit>('N·m', 'lbf·in', 'lbf·ft', 'kgf·cm', 'kgf·m');
const spelled = unit.chain((one) =>
  fc.constantFrom(...spellings[one]).map((spelling) => ({ unit: one, spelling })),
);
/** From 1.0 to 60.0 in tenths. */
const tenths = fc.integer({ min: 10, max: 600 }).map((n) => n / 10);
const mark = fc.constantFrom('.', ',');
const gap = fc.constantFrom('', ' ');

const written = (value: number, decimals: number, decimalMark: string) =>
  value.toFixed(decimals).replace('.', decimalMark);

type Figure = { readonly min?: number; readonly max?: number; readonly target?: number };

/** How a figure is printed: `@` where a number stands, in the order of `numbers`, and a lone `u` where the unit does. */
const shapes = fc.oneof(
  fc
    .tuple(tenths, fc.constantFrom('@u', 'Torque: @u', 'M5 @u', 'T25 @u', '(@u)'))
    .map(([target, form]) => ({ form, numbers: [target], figure: { target } as Figure })),
  fc
    .tuple(
      tenths,
      fc.constantFrom('max @u', 'MAX. @u', '≤@u', '@u max', '@u (max)', '@u or less', 'up to @u'),
    )
    .map(([max, form]) => ({ form, numbers: [max], figure: { max } as Figure })),
  fc
    .tuple(tenths, fc.constantFrom('min. @u', '≥ @u', 'at least @u', '@u min', '@u or more'))
    .map(([min, form]) => ({ form, numbers: [min], figure: { min } as Figure })),
  fc
    .tuple(
      tenths,
      tenths,
      fc.constantFrom(
        '@-@u',
        '@ – @u',
        '@u to @u',
        '@~@u',
        '@ bis @u',
        'between @ and @u',
        'min @u max @u',
        'min @ / max @u',
        '@ (min) - @ (max) u',
      ),
    )
    .map(([a, b, form]) => {
      const [min, max] = [Math.min(a, b), Math.max(a, b)];
      return { form, numbers: [min, max], figure: { min, max } as Figure };
    }),
);

function print(form: string, numbers: readonly string[], unitText: string, space: string): string {
  let next = 0;
  return form
    .replace(/@/g, () => numbers[next++] ?? '')
    .replace(/u(?=$|\)| )/g, `${space}${unitText}`);
}

describe('a marking made up from its parts', () => {
  test('[U3, U4, U13] is read as the numbers it was made from, in the unit it was printed in', () => {
    fc.assert(
      fc.property(
        shapes,
        spelled,
        mark,
        gap,
        ({ form, numbers, figure }, { unit: own, spelling }, decimalMark, space) => {
          const text = print(
            form,
            numbers.map((n) => written(n, 1, decimalMark)),
            spelling,
            space,
          );
          const read = parseTorqueMarking(text);
          if (!read.ok) throw new Error(`${text}: ${read.refusal.part}`);
          const { min, max, target } = read.value.printed[0] ?? {};
          const given = Object.fromEntries(
            Object.entries({ min, max, target }).filter(([, n]) => n !== undefined),
          );
          expect(given).toEqual(figure);
          expect(read.value.units).toEqual([own]);
          expect(read.value.disagree).toBe(false);
        },
      ),
      { numRuns: 400 },
    );
  });

  test('[U5] with a second unit rounded from the first it agrees, to however many digits', () => {
    const decimals = fc.integer({ min: 0, max: 3 });
    fc.assert(
      fc.property(tenths, tenths, unit, unit, decimals, (a, b, first, second, digits) => {
        fc.pre(first !== second);
        const [min, max] = [Math.min(a, b), Math.max(a, b)];
        const other = (value: number) => newtonMetresTo(newtonMetresFrom(value, first), second);
        const [low, high] = [other(min).toFixed(digits), other(max).toFixed(digits)];
        fc.pre(Number(low) > 0);
        const text = `${min.toFixed(1)}-${max.toFixed(1)} ${first} (${low}-${high} ${second})`;
        const read = parseTorqueMarking(text);
        expect(read.ok && read.value.disagree).toBe(false);
        const base =
          first === 'N·m' || second !== 'N·m' ? newtonMetresFrom(min, first) : Number(low);
        expect(read.ok && read.value.figure?.min).toBeCloseTo(base, 9);
      }),
      { numRuns: 300 },
    );
  });

  test('[U6] with a second unit further off than both roundings it disagrees', () => {
    fc.assert(
      fc.property(
        tenths,
        fc.boolean(),
        fc.double({ min: 1.01, max: 20, noNaN: true }),
        (value, up, times) => {
          // one decimal of N·m and of lbf·in: 0.05 N·m and 0.05 lbf·in at most
          const apart = times * (newtonMetresTo(newtonMetres(0.05), 'lbf·in') + 0.05) + 0.05;
          const other = newtonMetresTo(newtonMetres(value), 'lbf·in') + (up ? apart : -apart);
          fc.pre(other > 1);
          const read = parseTorqueMarking(`${value.toFixed(1)} Nm (${other.toFixed(1)} in-lb)`);
          expect(read.ok && read.value.disagree).toBe(true);
          expect(read.ok && read.value.figure).toBeUndefined();
        },
      ),
    );
  });

  test('[U4] a tolerance to either side is taken from its value', () => {
    const hundredths = fc.integer({ min: 0, max: 90 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        tenths,
        hundredths,
        hundredths,
        fc.boolean(),
        (target, above, below, plusFirst) => {
          const [plus, minus] = [`+${above.toFixed(2)}`, `−${below.toFixed(2)}`];
          const text = `${target.toFixed(1)} N·m ${plusFirst ? `${plus}/${minus}` : `${minus}/${plus}`}`;
          const read = parseTorqueMarking(text);
          const figure = read.ok ? read.value.figure : undefined;
          expect(figure?.target).toBe(target);
          expect(figure?.max).toBeCloseTo(target + above, 9);
          expect(figure?.min).toBeCloseTo(target - below, 9);
        },
      ),
    );
  });
});
