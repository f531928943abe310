/** How the figures of one marking are told apart, joined and compared; the forms are common practice, no source. */

import { describe, expect, test } from 'vitest';
import { newtonMetres, parseTorqueMarking, writeTorqueMarking } from '../../../src/engine/units';

function read(text: string) {
  const marking = parseTorqueMarking(text);
  if (!marking.ok) throw new Error(`${marking.refusal.code}: ${marking.refusal.part}`);
  return marking.value;
}

describe('a marking', () => {
  test.each<[text: string, figure: object]>([
    ['max 5 Nm, 4 Nm', { target: 4, max: 5 }],
    ['min 4 Nm, 5 Nm', { min: 4, target: 5 }],
    ['5 Nm (max 5 Nm)', { target: 5, max: 5 }],
    ['5 Nm (min 5 Nm)', { min: 5, target: 5 }],
    ['min 5 Nm / max 5 Nm', { min: 5, max: 5 }],
  ])('[U10] in one unit a second number is its own: %s', (text, figure) => {
    expect(read(text)).toMatchObject({ disagree: false, figure });
    expect(read(text).printed).toHaveLength(1);
  });

  test.each<[text: string, alone: readonly string[]]>([
    ['5-6 Nm (44 in-lb)', ['5-6 Nm', '44 in-lb']],
    ['5 Nm (44 in-lb)', ['5 Nm', '44 in-lb']],
    ['5 Nm ± 1 (44 in-lb)', ['5 Nm ± 1', '44 in-lb']],
    ['min 5 Nm (44 in-lb)', ['min 5 Nm', 'min 44 in-lb']],
    ['max 5 Nm (44 in-lb ± 1)', ['max 5 Nm', '44 in-lb ± 1']],
    ['max 5 Nm (44-53 in-lb)', ['max 5 Nm', '44-53 in-lb']],
    ['max 5 Nm (min 44 in-lb)', ['max 5 Nm', 'min 44 in-lb']],
  ])('[U10] only a bound that stands alone is passed on: %s', (text, alone) => {
    expect(read(text).printed.map((one) => one.text)).toEqual(alone);
  });

  // 44.5 lbf·in is 5.0278 N·m: what rounds to 44 in-lb ends there
  test.each<[text: string, disagree: boolean]>([
    ['5.03 Nm (44 in-lb)', false],
    ['5.04 Nm (44 in-lb)', true],
    ['4.91 Nm (44 in-lb)', false],
    ['4.90 Nm (44 in-lb)', true],
    ['5.5 Nm / 5 Nm', false],
    ['5.51 Nm / 5 Nm', true],
    ['5 Nm / 5.50 Nm', false],
    ['5.00 Nm / 5.01 Nm', true],
    ['5 Nm ± 10% (44 in-lb)', false],
    ['44 in-lb (5 Nm ± 10%)', false],
    ['44 in-lb ± 4 (5 Nm)', false],
  ])('[U5, U6] %s disagrees: %s', (text, disagree) => {
    expect(read(text).disagree).toBe(disagree);
  });

  test('[U11] no limits write nothing', () => {
    expect(writeTorqueMarking({})).toBe('');
    expect(writeTorqueMarking({ min: newtonMetres(4), max: newtonMetres(6) }, 'kgf·cm', 0)).toBe(
      '41–61 kgf·cm',
    );
  });
});
