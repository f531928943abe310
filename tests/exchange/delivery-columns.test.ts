/** The columns of a delivery list reach the whole description of a bike, and the demo's lists keep to them. */

import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { bikeKinds, bikeSchema, isGtin, questions } from '../../src/engine/bike';
import { type DeliveryColumn, deliveryColumns } from '../../src/exchange/delivery-columns';
import { deliveryDefaults } from '../../src/exchange/delivery-defaults';

type Row = Readonly<Record<string, string>>;

const byName = new Map(deliveryColumns.map((column) => [column.name, column]));

describe('the columns', () => {
  test('have a name each, and fill only places that the description has', () => {
    expect(byName.size).toBe(deliveryColumns.length);
    const filled = deliveryColumns.flatMap(({ fills }) => fills);
    expect(filled.filter((place) => !questions.includes(place))).toEqual([]);
    expect(new Set(filled).size).toBe(filled.length);
  });

  test('take from other columns only what those have, and name choices wherever they offer any', () => {
    for (const { likeColumn, reads, allowed } of deliveryColumns) {
      if (likeColumn !== undefined) expect(byName.has(likeColumn)).toBe(true);
      if (reads === 'choice' || reads === 'choices') expect(allowed?.length).toBeGreaterThan(1);
    }
  });

  test('let a row of the required cells alone build a bike of every kind', () => {
    for (const kind of bikeKinds) {
      const row = { ...bareRow, kind };
      expect(bikeSchema.safeParse(descriptionIn(row)).success).toBe(true);
    }
    const required = deliveryColumns.filter((column) => column.required).map(({ name }) => name);
    expect(required.sort()).toEqual(Object.keys(bareRow).sort());
  });

  test('leave out only what the columns know and allow, kind by kind', () => {
    for (const row of Object.values(deliveryDefaults)) {
      expect(complaintsAbout(row)).toEqual([]);
    }
  });
});

describe('the demo’s pallet', () => {
  const text = readFileSync(
    new URL('../../public/demo/delivery-list.csv', import.meta.url),
    'utf8',
  );
  const { names, rows } = read(text);

  test('is written as RFC 4180 asks: lines end in CRLF, and every row has as many cells as the header', () => {
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(rows).toHaveLength(12);
    for (const row of rows) expect(Object.keys(row)).toHaveLength(names.length);
    expect(text).toContain('"Harbour blue, matt"');
  });

  test('uses known columns, and fills the required ones with what they allow', () => {
    expect(names.filter((name) => !byName.has(name))).toEqual([]);
    expect(rows.flatMap(complaintsAbout)).toEqual([]);
    for (const { name, required } of deliveryColumns) {
      if (required) expect(rows.every((row) => row[name] !== '')).toBe(true);
    }
  });

  test('builds twelve bikes, none twice, with right article numbers', () => {
    const bikes = rows.map((row) => bikeSchema.parse(descriptionIn(row)));
    expect(new Set(bikes.map(({ frameNumber }) => frameNumber)).size).toBe(12);
    for (const { gtin = '' } of bikes) expect(isGtin(gtin)).toBe(true);
    expect(bikes[0]?.fork.kind).toBe('suspension');
    expect(bikes[5]?.rear.tyre).toBe(bikes[5]?.front.tyre);
  });
});

test('the list with mistakes has one frame number that is none, one brake that is none, and one bike twice, each by its cell', () => {
  const url = new URL('../support/delivery-list-with-mistakes.csv', import.meta.url);
  const { rows } = read(readFileSync(url, 'utf8'));
  expect(rows).toHaveLength(9);
  expect(rows.flatMap(complaintsAbout)).toEqual(['front_brake: spoon']);
  const frames = rows.map((row) => {
    const parsed = bikeSchema.safeParse(descriptionIn({ ...row, front_brake: 'linear-pull' }));
    return parsed.success ? parsed.data.frameNumber : undefined;
  });
  expect(frames.filter((frame) => frame === undefined)).toHaveLength(1);
  expect(frames[5]).toBe(frames[0]);
});

const bareRow: Row = {
  make: 'Any',
  model: 'One',
  kind: 'town',
  frame_number: 'A-1000',
  front_axle: 'nutted',
  rear_axle: 'nutted',
  front_brake: 'none',
  rear_brake: 'coaster',
  front_tyre: '47-305',
  stem: 'quill',
  post_diameter_mm: '25.4',
  gears: 'single-speed',
  speeds: '1',
};

function read(text: string): { readonly names: readonly string[]; readonly rows: readonly Row[] } {
  const { data, errors, meta } = Papa.parse<Row>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return { names: meta.fields ?? [], rows: data };
}

function complaintsAbout(row: Row): readonly string[] {
  return Object.entries(row).flatMap(([name, cell]) => {
    const allowed = byName.get(name)?.allowed;
    if (allowed === undefined || cell === '') return [];
    return cell.split(';').every((one) => allowed.includes(one)) ? [] : [`${name}: ${cell}`];
  });
}

/** The description that a row's cells spell out, place by place. */
function descriptionIn(row: Row): unknown {
  const description: Record<string, unknown> = {};
  for (const column of deliveryColumns) {
    const cell = cellOf(column, row);
    if (cell === '') continue;
    for (const place of column.fills) fill(description, place.split('.'), readCell(column, cell));
  }
  for (const part of ['frame', 'cranks', 'pedals']) description[part] ??= {};
  return description;
}

function cellOf({ name, likeColumn = '' }: DeliveryColumn, row: Row): string {
  const byKind: Row =
    Object.entries(deliveryDefaults).find(([kind]) => kind === row.kind)?.[1] ?? {};
  return row[name] || row[likeColumn] || byKind[name] || '';
}

function readCell({ reads }: DeliveryColumn, cell: string): unknown {
  if (reads === 'number') return Number(cell);
  if (reads === 'choices') return cell.split(';');
  return reads === 'yes-no' ? cell === 'yes' : cell;
}

function fill(part: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [name = '', ...rest] = path;
  if (rest.length === 0) {
    part[name] = value;
    return;
  }
  part[name] ??= {};
  fill(part[name] as Record<string, unknown>, rest, value); // only parts stand before a dot
}
