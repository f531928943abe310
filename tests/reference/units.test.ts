/** Unit factors against their definitions, against mathjs where it is exact, and against printed pairs. */

import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  kilopascals,
  kilopascalsFrom,
  kilopascalsTo,
  newtonMetres,
  newtonMetresFrom,
  newtonMetresTo,
  type PressureUnit,
  parseTorqueMarking,
  type TorqueUnit,
} from '../../src/engine/units';

const relative = (computed: number, expected: number) => Math.abs(computed / expected - 1);

describe('torque units', () => {
  // exact: lb = 0.453 592 37 kg, g = 9.806 65 m/s², in = 25.4 mm; NIST SP 811 prints 1.129 848 E-01 and 1.355 818
  test.each<[TorqueUnit, inNewtonMetres: number]>([
    ['N·m', 1],
    ['lbf·in', 0.11298482902761668],
    ['lbf·ft', 1.3558179483314003],
    ['kgf·cm', 0.0980665],
    ['kgf·m', 9.80665],
  ])('[U1] 1 %s is %d N·m by definition', (name, inNewtonMetres) => {
    expect(relative(newtonMetresFrom(1, name), inNewtonMetres)).toBeLessThan(1e-12);
  });

  test.each<[TorqueUnit, perNewtonMetre: number]>([
    ['lbf·in', 8.850745791327185],
    ['lbf·ft', 0.7375621492772654],
    ['kgf·cm', 10.197162129779283],
    ['kgf·m', 0.10197162129779283],
  ])('[U1] 1 N·m in %s is %d by definition', (name, perNewtonMetre) => {
    expect(relative(newtonMetresTo(newtonMetres(1), name), perNewtonMetre)).toBeLessThan(1e-12);
  });

  // mathjs converts torque exactly; it has no kgf, so that side is built from kilograms and gravity
  test.each<[TorqueUnit, expression: string]>([
    ['lbf·in', 'lbf in'],
    ['lbf·ft', 'lbf ft'],
    ['kgf·cm', '9.80665 N cm'],
    ['kgf·m', '9.80665 N m'],
  ])('[U1] %s agrees with mathjs (%s)', (name, expression) => {
    expect(relative(newtonMetresFrom(1, name), unit(expression).toNumber('N m'))).toBeLessThan(
      1e-12,
    );
  });

  test('[U1] a foot-pound is twelve inch-pounds', () => {
    expect(relative(newtonMetresFrom(1, 'lbf·ft'), newtonMetresFrom(12, 'lbf·in'))).toBeLessThan(
      1e-15,
    );
  });

  test.each<[value: number, TorqueUnit, newtonMetres: number, within: number, source: string]>([
    [12.5, 'lbf·ft', 17, 0.1, '16 CFR 1512.12(a)(2)'],
    [350, 'lbf·in', 39.5, 0.1, '16 CFR 1512.14'],
  ])('[U1] %d %s is printed as %d N·m (±%d, %s)', (value, name, printed, within) => {
    expect(Math.abs(newtonMetresFrom(value, name) - printed)).toBeLessThanOrEqual(within);
  });
});

describe('pressure units', () => {
  // exact: bar = 100 kPa, psi = lbf/in²; NIST SP 811 prints 6.894 757 E+03 Pa
  test.each<[value: number, from: PressureUnit, to: PressureUnit, expected: number]>([
    [1, 'psi', 'kPa', 6.894757293168361],
    [1, 'bar', 'kPa', 100],
    [100, 'psi', 'bar', 6.894757293168361],
    [1, 'bar', 'psi', 14.503773773020923],
    [5, 'bar', 'psi', 72.51886886510461],
    [400, 'kPa', 'psi', 58.01509509208369],
    [1, 'kPa', 'psi', 0.14503773773020923],
  ])('[U1] %d %s in %s is %d', (value, from, to, expected) => {
    expect(relative(kilopascalsTo(kilopascalsFrom(value, from), to), expected)).toBeLessThan(1e-12);
  });

  test('[U1] psi agrees with mathjs as far as mathjs goes (6e-11)', () => {
    const bymathjs = unit('1 psi').toNumber('kPa');
    expect(relative(kilopascalsFrom(1, 'psi'), bymathjs)).toBeLessThan(1e-10);
    expect(kilopascalsTo(kilopascals(250), 'bar')).toBe(2.5);
  });
});

describe('ranges printed in two units', () => {
  // an owner's manual torque appendix that prints both
  test.each<[lbfIn: string, newtonMetres: string]>([
    ['174-347', '19.7-39.2'],
    ['174-260', '19.7-29.4'],
    ['130-150', '14.7-16.9'],
    ['120-144', '13.6-16.3'],
    ['44-88', '5.0-9.9'],
    ['70-95', '7.9-10.7'],
    ['305-391', '34.5-44.2'],
    ['307-350', '34.7-39.5'],
    ['44-60', '5.0-6.8'],
  ])('[U5] %s lbf·in and %s N·m agree within rounding', (lbfIn, newtons) => {
    const [min, max] = newtons.split('-').map(Number);
    const read = parseTorqueMarking(`${lbfIn} in-lb (${newtons} Nm)`);
    expect(read).toMatchObject({ ok: true, value: { disagree: false, figure: { min, max } } });
  });

  test('[U6] 350 lbf·in printed as 40.2 N·m disagrees: it is 39.54 (a manual that contradicts itself)', () => {
    const read = parseTorqueMarking('350 lbf·in (40.2 N·m)');
    expect(read).toMatchObject({ ok: true, value: { disagree: true } });
    expect(read.ok && read.value.figure).toBeUndefined();
  });
});
