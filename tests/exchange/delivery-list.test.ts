/** Delivery lists: good rows stay good, bad rows are named by line and reason, and nothing is guessed. */

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contradictionsIn, entryBounds } from '../../src/engine/bike';
import { parseTyreMarking } from '../../src/engine/tyres';
import { deliveryColumns } from '../../src/exchange/delivery-columns';
import { readDeliveryList } from '../../src/exchange/delivery-list';

const context = { knownFrameNumbers: new Set<string>(), today: '2026-11-25' };

/** Every required column, and the two that say what belongs to the promise. */
const columns = (
  'delivery due make model kind frame_number front_axle rear_axle front_brake rear_brake ' +
  'front_tyre stem post_diameter_mm gears speeds gtin'
).split(' ');
const good: Readonly<Record<string, string>> = {
  delivery: 'N-7',
  due: '2026-11-28',
  make: 'Larkfell',
  model: 'Hardtail 29',
  kind: 'mountain-hardtail',
  frame_number: 'LF-1001',
  front_axle: 'quick-release',
  rear_axle: 'quick-release',
  front_brake: 'hydraulic-disc',
  rear_brake: 'hydraulic-disc',
  front_tyre: '57-622',
  stem: 'threadless',
  post_diameter_mm: '30.9',
  gears: 'derailleur',
  speeds: '11',
  gtin: '',
};

function row(changes: Readonly<Record<string, string>> = {}, separator = ','): string {
  return columns.map((name) => changes[name] ?? good[name] ?? '').join(separator);
}

function list(rows: readonly string[], lineEnd = '\r\n', separator = ','): string {
  return [columns.join(separator), ...rows, ''].join(lineEnd);
}

function read(text: string, known: Partial<typeof context> = {}) {
  const result = readDeliveryList(text, { ...context, ...known });
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.value;
}

describe('a list that is good', () => {
  test('gives each bike its line, its promise and its delivery note', () => {
    const { rows, refused } = read(list([row(), row({ frame_number: 'lf-1002', due: '' })]));
    expect(refused).toEqual([]);
    expect(rows).toMatchObject([
      { line: 2, due: '2026-11-28T18:00', delivery: 'N-7', bike: { frameNumber: 'LF-1001' } },
      { line: 3, delivery: 'N-7', bike: { frameNumber: 'LF-1002' } },
    ]);
    expect(rows[1]).not.toHaveProperty('due');
  });

  test('fills what it leaves out with the commonest for the kind, and the rear like the front', () => {
    const [first] = read(list([row()])).rows;
    expect(first?.bike).toMatchObject({
      fork: { kind: 'suspension' },
      steering: { bar: 'riser', faceplateBolts: 4 },
      rear: { tyre: '57-622' },
    });
  });

  test('says nothing of materials, so they are not known', () => {
    const [first] = read(list([row()])).rows;
    expect(first?.bike).toMatchObject({
      frame: { material: 'unknown' },
      fork: { steerer: 'unknown' },
      steering: { barMaterial: 'unknown' },
      seat: { postMaterial: 'unknown' },
    });
  });

  test.each([
    ['lines that end in LF', list([row()], '\n')],
    ['a byte order mark', `\uFEFF${list([row()])}`],
    ['empty lines', list(['', row(), '', ''])],
    ['a last line without an end', list([row()]).trimEnd()],
    ['headers in capitals', list([row()]).replace('make,model', 'MAKE, Model')],
    ['spaces round the cells', list([row({ kind: ' mountain-hardtail ' })])],
  ])('may have %s', (_, text) => {
    expect(read(text)).toMatchObject({ rows: [{ bike: { make: 'Larkfell' } }], refused: [] });
  });

  test('may have semicolons, and then decimal commas', () => {
    const text = list([row({ post_diameter_mm: '30,9' }, ';')], '\r\n', ';');
    expect(read(text).rows[0]?.bike.seat.postDiameter).toBe(30.9);
  });

  // RFC 4180, section 2, rules 5 to 7: quotes, commas, line breaks and doubled quotes inside a cell.
  test('may have quotes, commas and line breaks in a cell, and still counts lines as an editor does', () => {
    const model = '"Hardtail, ""29""\r\nlong"';
    const { rows } = read(list([row({ model }), row({ frame_number: 'LF-1002' })]));
    expect(rows.map(({ line, bike }) => [line, bike.model])).toEqual([
      [2, 'Hardtail, "29"\r\nlong'],
      [4, 'Hardtail 29'],
    ]);
  });

  test.each(['=1+1', '+44 20', '-42', '@shop'])(
    'takes a cell that begins like a formula (%s) as text',
    (text) => {
      expect(read(list([row({ model: text })])).rows[0]?.bike.model).toBe(text);
    },
  );

  test('the list that comes with the demo is read whole', () => {
    const text = readFileSync(
      new URL('../../public/demo/delivery-list.csv', import.meta.url),
      'utf8',
    );
    const { rows, refused } = read(text);
    expect(refused).toEqual([]);
    expect(rows).toHaveLength(12);
  });
});

describe('a row that is bad', () => {
  test.each([
    ['an empty cell that must be filled', { make: '' }, { code: 'cell-missing', column: 'make' }],
    [
      'a brake nobody knows',
      { front_brake: 'spoon' },
      { code: 'cell-not-allowed', column: 'front_brake', value: 'spoon' },
    ],
    ['a number in words', { speeds: 'eleven' }, { code: 'cell-not-a-number', column: 'speeds' }],
    [
      'more speeds than there are',
      { speeds: '99' },
      { code: 'cell-out-of-bounds', column: 'speeds', value: '99', min: 1, max: 14 },
    ],
    [
      'a frame number that cannot be',
      { frame_number: 'LF#1' },
      { code: 'cell-not-valid', column: 'frame_number', value: 'LF#1' },
    ],
    [
      'a post whose point was lost',
      { post_diameter_mm: '309' },
      { code: 'cell-out-of-bounds', column: 'post_diameter_mm', value: '309', min: 22, unit: 'mm' },
    ],
    [
      'a tyre that is none',
      { front_tyre: 'big' },
      { code: 'cell-no-tyre-size', column: 'front_tyre', value: 'big' },
    ],
    [
      'an article number too short',
      { gtin: '12345' },
      { code: 'cell-not-valid', column: 'gtin', value: '12345' },
    ],
    [
      'gears that no single speed has',
      { gears: 'single-speed' },
      { code: 'cells-at-odds', column: 'gears', other: 'speeds', otherValue: '11' },
    ],
    [
      'a date as people write it',
      { due: '28/11/2026' },
      { code: 'cell-not-a-date', column: 'due' },
    ],
    ['a day that no month has', { due: '2026-11-31' }, { code: 'cell-not-a-date', column: 'due' }],
    ['a year mistyped', { due: '2062-11-28' }, { code: 'date-far-away', column: 'due' }],
    // GS1 General Specifications: 629104150021 has the check digit 3.
    [
      'an article number with a wrong check digit',
      { gtin: '6291041500214' },
      { code: 'gtin-check-digit', column: 'gtin' },
    ],
  ])('is named for %s, and the good one beside it is kept', (_, changes, expected) => {
    const { rows, refused } = read(list([row(changes), row({ frame_number: 'LF-1002' })]));
    expect(refused).toMatchObject([{ line: 2, ...expected }]);
    expect(rows.map(({ line }) => line)).toEqual([3]);
  });

  test.each([
    ['backwards, psi', '65-40 psi', { code: 'cell-no-pressure', column: 'front_pressure' }],
    ['backwards, bar', '5-2.5 bar', { code: 'cell-no-pressure', column: 'front_pressure' }],
    ['without a unit', '40-65', { code: 'cell-no-pressure', column: 'front_pressure' }],
    ['psi as bar', '40-65 bar', { code: 'cell-pressure-unlikely', column: 'front_pressure' }],
    ['above its rim', '5-6 bar', { code: 'cell-pressure-above-rim', column: 'front_pressure' }],
  ])('is named for a pressure %s, and the good one beside it is kept', (_, value, expected) => {
    const wheels = (pressure: string) => `${row()},${pressure},380`;
    const text = list([wheels(value), row({ frame_number: 'LF-1002' }).concat(',2-3 bar,380')]);
    const { rows, refused } = read(text.replace('gtin', 'gtin,front_pressure,rim_max_kpa'));
    expect(refused).toEqual([{ line: 2, value, ...expected }]);
    expect(rows.map(({ line }) => line)).toEqual([3]);
  });

  test('is named once for a rear tyre that is like the front, and for each where they differ', () => {
    const columnsOf = (text: string) => read(text).refused.map(({ column }) => column);
    expect(columnsOf(list([row({ front_tyre: 'big' })]))).toEqual(['front_tyre']);
    const differing = list([`${row({ front_tyre: 'big' })},fat`]).replace('gtin', 'gtin,rear_tyre');
    expect(columnsOf(differing)).toEqual(['front_tyre', 'rear_tyre']);
  });

  test('is named for each of its faults', () => {
    const { refused } = read(list([row({ make: '', front_brake: 'spoon', speeds: 'x' })]));
    expect(refused.map(({ column }) => column)).toEqual(['make', 'front_brake', 'speeds']);
  });

  test('is named when it has more or fewer cells than the header', () => {
    const { refused } = read(list([`${row()},more`, row().split(',').slice(0, -1).join(',')]));
    expect(refused).toEqual([
      { code: 'row-too-long', line: 2 },
      { code: 'row-too-short', line: 3 },
    ]);
  });

  test('is named when a quote never closes', () => {
    expect(read(list([row(), row({ model: '"open' })])).refused).toMatchObject([
      { code: 'row-quotes', line: 3 },
    ]);
  });

  test('is named when its frame number came before, in the list or in the shop', () => {
    const twice = list([row(), row({ frame_number: 'LF-9' }), row({ frame_number: 'lf-1001' })]);
    const { rows, refused } = read(twice, { knownFrameNumbers: new Set(['LF-9']) });
    expect(rows.map(({ line }) => line)).toEqual([2]);
    expect(refused).toEqual([
      { code: 'frame-number-known', line: 3, column: 'frame_number', value: 'LF-9' },
      {
        code: 'frame-number-twice',
        line: 4,
        column: 'frame_number',
        value: 'LF-1001',
        firstLine: 2,
      },
    ]);
  });

  test('the list with mistakes gives a reason for each', () => {
    const text = readFileSync(
      new URL('../support/delivery-list-with-mistakes.csv', import.meta.url),
      'utf8',
    );
    const { refused } = read(text);
    expect(refused.map(({ code, column }) => [code, column])).toEqual([
      ['cell-not-valid', 'frame_number'],
      ['cell-not-allowed', 'front_brake'],
      ['frame-number-twice', 'frame_number'],
      ['cell-no-pressure', 'front_pressure'],
      ['cell-no-pressure', 'rear_pressure'],
      ['cell-out-of-bounds', 'post_diameter_mm'],
      ['cell-no-tyre-size', 'front_tyre'],
    ]);
  });
});

test('whatever is taken in has tyres that can be planned, and nothing no bike has together', () => {
  const cells = fc.record({
    front_tyre: fc.constantFrom('57-622', 'big', '28 x 1.75', '26 x 2.1'),
    rear_brake: fc.constantFrom('hydraulic-disc', 'coaster', 'none'),
    rear_axle: fc.constantFrom('quick-release', 'nutted', 'thru-axle'),
    gears: fc.constantFrom('derailleur', 'hub', 'single-speed'),
    speeds: fc.constantFrom('1', '7', '11', '99'),
    stem: fc.constantFrom('threadless', 'quill'),
  });
  fc.assert(
    fc.property(cells, (changes) => {
      for (const { bike } of read(list([row(changes)])).rows) {
        expect(contradictionsIn(bike)).toEqual([]);
        expect(parseTyreMarking(bike.front.tyre).ok && parseTyreMarking(bike.rear.tyre).ok).toBe(
          true,
        );
      }
    }),
  );
});

test('every column of numbers without a list of choices has bounds', () => {
  const unbound = deliveryColumns.filter(
    ({ reads, allowed, fills }) =>
      reads === 'number' &&
      allowed === undefined &&
      !fills.every((place) => entryBounds[place] !== undefined),
  );
  expect(unbound).toEqual([]);
});

describe('a list that is no list', () => {
  test.each([
    ['nothing', '', { code: 'list-empty' }],
    ['only a row without a header', row(), { code: 'list-header-missing' }],
    [
      'a column nobody knows',
      list([row()]).replace('make', 'maker'),
      { code: 'list-columns-unknown', columns: ['maker'] },
    ],
    [
      'a column twice',
      list([]).replace('delivery,', 'make,'),
      { code: 'list-columns-twice', columns: ['make'] },
    ],
    [
      'a column too few',
      list([]).replace(',speeds', ''),
      { code: 'list-columns-missing', columns: ['speeds'] },
    ],
    ['bytes', 'PK\u0003\u0004\u0000\u0000', { code: 'list-not-text' }],
    ['more than a lorry brings', 'x'.repeat(1024 * 1024 + 1), { code: 'list-too-large' }],
  ])('is refused as a whole: %s', (_, text, expected) => {
    expect(readDeliveryList(text, context)).toMatchObject({ ok: false, refusal: expected });
  });

  test('never throws, and never gives more bikes than lines', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('"', '\r\n', ',', ';', 'town', '57-622'));
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 18 }), { maxLength: 6 }), (cells) => {
        const text = list(cells.map((row) => row.join(',')));
        const result = readDeliveryList(text, context);
        if (result.ok) expect(result.value.rows.length).toBeLessThan(text.split('\n').length);
      }),
    );
  });
});
