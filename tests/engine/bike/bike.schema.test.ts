import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axles, bikeKinds, bikeSchema, brakes, stems } from '../../../src/engine/bike';
import { bikeFrom, mountainBike, townBike, withChanges } from '../../support/bikes';

describe('what is left out', () => {
  test.each<
    [situation: string, answer: (bike: ReturnType<typeof bikeFrom>) => unknown, expected: unknown]
  >([
    ['the front wheel is not fitted in the box', (bike) => bike.front.fitted, false],
    ['the rear wheel is fitted in the box', (bike) => bike.rear.fitted, true],
    ['no motor', (bike) => bike.assist, 'none'],
    ['an aluminium frame', (bike) => bike.frame.material, 'aluminium'],
    ['four bolts on the faceplate', (bike) => bike.steering.faceplateBolts, 4],
    ['inner tubes', (bike) => bike.front.tyreFit, 'tube'],
    ['a hooked rim', (bike) => bike.rear.hookless, false],
    ['a chain', (bike) => bike.gears.drive, 'chain'],
    ['no extras', (bike) => bike.extras, []],
    [
      'a tyre pressure stays open: it is read at the stand',
      (bike) => bike.front.tyrePressure,
      undefined,
    ],
    ['a load limit stays open: no figure is made up', (bike) => bike.loadLimit, undefined],
  ])('[K1] %s', (_, answer, expected) => {
    expect(answer(bikeFrom(mountainBike))).toEqual(expected);
  });
});

describe('what cannot be', () => {
  test.each<[situation: string, changes: Record<string, unknown>, place: PropertyKey[]]>([
    ['no kind', { kind: undefined }, ['kind']],
    ['a brake that no bike has', { rear: { brake: 'anchor' } }, ['rear', 'brake']],
    ['an axle that no bike has', { front: { axle: 'glued' } }, ['front', 'axle']],
    ['a seat post of no thickness', { seat: { postDiameter: 0 } }, ['seat', 'postDiameter']],
    ['a thickness written as text', { seat: { postDiameter: '27.2' } }, ['seat', 'postDiameter']],
    [
      'three bolts on a faceplate',
      { steering: { faceplateBolts: 3 } },
      ['steering', 'faceplateBolts'],
    ],
    ['fifteen speeds', { gears: { speeds: 15 } }, ['gears', 'speeds']],
    ['half a speed', { gears: { speeds: 1.5 } }, ['gears', 'speeds']],
    ['no tyre marking', { front: { tyre: '  ' } }, ['front', 'tyre']],
    ['an unknown extra', { extras: ['bell', 'sail'] }, ['extras', 1]],
    ['an article number of nine digits', { gtin: '123456789' }, ['gtin']],
    ['a load limit below nothing', { loadLimit: -1 }, ['loadLimit']],
  ])('[K1] %s is refused, and its place named', (_, changes, place) => {
    const parsed = bikeSchema.safeParse(withChanges(mountainBike, changes));
    expect(parsed.error?.issues.map((issue) => issue.path)).toEqual([place]);
  });

  test('[K1] a parsed bike parses to itself, whatever it is made of', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...bikeKinds),
        fc.constantFrom(...axles),
        fc.constantFrom(...brakes),
        fc.constantFrom(...stems),
        fc.boolean(),
        (kind, axle, brake, stem, fitted) => {
          const bike = bikeFrom(townBike, {
            kind,
            rear: { axle, brake, fitted },
            steering: { stem },
          });
          expect(bikeSchema.parse(bike)).toEqual(bike);
        },
      ),
      { seed: 2202 },
    );
  });
});

describe('features that were added later', () => {
  test('[K9] nothing is filled in for them, so a stored bike parses to itself', () => {
    const { frame, front, gears } = bikeFrom(mountainBike);
    expect(Object.keys(frame).sort()).toEqual(['material', 'shape']);
    expect(Object.keys(gears).sort()).toEqual(['chainrings', 'drive', 'kind', 'speeds']);
    expect(Object.keys(front).sort()).toEqual(
      ['axle', 'brake', 'fitted', 'hookless', 'tyre', 'tyreFit'].sort(),
    );
  });
});

describe('frame number', () => {
  test.each<[situation: string, typed: string, kept: string]>([
    ['small letters', 'wbk12345', 'WBK12345'],
    ['space around', '  HW24-00417 ', 'HW24-00417'],
    ['inner marks stay', 'a1.b2/c3-d4 e5', 'A1.B2/C3-D4 E5'],
  ])('[K3] %s', (_, typed, kept) => {
    expect(bikeFrom(mountainBike, { frameNumber: typed }).frameNumber).toBe(kept);
  });

  test.each<[situation: string, typed: string]>([
    ['two characters', 'A1'],
    ['more than thirty', 'A'.repeat(31)],
    ['a mark in front', '-12345'],
    ['a letter outside A to Z', 'ÄB1234'],
    ['a line break', 'AB\n1234'],
    ['nothing but space', '     '],
  ])('[K3] %s is refused', (_, typed) => {
    const parsed = bikeSchema.safeParse(withChanges(mountainBike, { frameNumber: typed }));
    expect(parsed.error?.issues.map((issue) => issue.path)).toEqual([['frameNumber']]);
  });
});
