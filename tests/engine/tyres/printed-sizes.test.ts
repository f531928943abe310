/** Finding the sizes in the print of a side wall, however it is spelled. */

import { describe, expect, test } from 'vitest';
import { printedSizes } from '../../../src/engine/tyres/printed-sizes';

const found = (marking: string) =>
  printedSizes(marking).sizes.map(({ system, width, beadSeats }) => [system, width, ...beadSeats]);

describe('printedSizes', () => {
  test.each<[marking: string, sizes: (string | number)[][]]>([
    ['57-622', [['etrto', 57, 622]]],
    ['ETRTO 57 – 622', [['etrto', 57, 622]]],
    ['57‑622', [['etrto', 57, 622]]],
    ['29 x 2.25', [['inch', 57, 622]]],
    ['29″×2,25″', [['inch', 57, 622]]],
    ['29"X2.25"', [['inch', 57, 622]]],
    ['26 in x 1.75 in', [['inch', 44, 559]]],
    ['27.5+ x 2.8', [['inch', 71, 584]]],
    ['12½ x 2¼', [['inch', 57, 203]]],
    ['12-1/2 x 2-1/4', [['inch', 57, 203]]],
    ['12.5 x 2.25', [['inch', 57, 203]]],
    ['26×1⅜', [['inch', 37, 590]]],
    ['26 x 2', [['inch', 51, 559]]],
    ['28 x 1 3/8 x 1 5/8', [['inch', 37, 622]]],
    ['700x38C', [['french', 38, 622]]],
    ['700 C x 38', [['french', 38, 622]]],
    ['650b x 47', [['french', 47, 584]]],
    [
      '37-622 (28 x 1.40, 700x35C)',
      [
        ['etrto', 37, 622],
        ['inch', 36, 622],
        ['french', 35, 622],
      ],
    ],
  ])('[Y1] %s', (marking, sizes) => {
    expect(found(marking)).toEqual(sizes);
  });

  test.each<[situation: string, marking: string]>([
    ['a pressure range in kPa', '40-650 kPa'],
    ['a pressure range in kPa, close together', '40-650kPa'],
    ['a pressure range in psi', '40-65 psi'],
    ['a width no tyre has', '26 x 17.5'],
    ['a longer number', '1057-6220'],
    ['words', 'made for the road'],
  ])('[Y4] %s is no size', (_, marking) => {
    expect(found(marking)).toEqual([]);
  });

  test('[Y5] what is left is what is not a size', () => {
    expect(printedSizes('28 x 1 40-65 psi').rest.trim()).toBe('40-65 psi');
    expect(printedSizes('29 x 2.25 57-622 4 BAR').rest.trim()).toBe('4 bar');
  });
});
