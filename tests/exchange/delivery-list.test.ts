/** Delivery lists: good rows stay good, bad rows are named by line and reason, and nothing is guessed. */

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
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
      { code: 'cell-not-valid', column: 'speeds', value: '99' },
    ],
    [
      'a frame number that cannot be',
      { frame_number: 'LF#1' },
      { code: 'cell-not-valid', column: 'frame_number', value: 'LF#1' },
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

  test('the list with three mistakes gives three reasons', () => {
    const text = readFileSync(
      new URL('../support/delivery-list-with-mistakes.csv', import.meta.url),
      'utf8',
    );
    const { refused } = read(text);
    expect(refused.map(({ code, column }) => [code, column])).toEqual([
      ['cell-not-valid', 'frame_number'],
      ['cell-not-allowed', 'front_brake'],
      ['frame-number-twice', 'frame_number'],
    ]);
  });
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
