/** One row of a delivery list: from cells to a bike, or to what is wrong with each cell. */

import { ok, type Result, refuse } from '../engine/base';
import { type Bike, bikeKinds, bikeSchema, isGtin } from '../engine/bike';
import type { CsvRow } from './csv-rows';
import { type CellValue, cellRefusal, readCell } from './delivery-cell';
import { type DeliveryColumn, deliveryColumns } from './delivery-columns';
import { deliveryDefaults } from './delivery-defaults';
import { type BikeFault, faultsOfBike } from './delivery-faults';

export interface DeliveredBike {
  readonly line: number;
  readonly bike: Bike;
  /** ISO local date and time. */
  readonly due?: string;
  readonly delivery?: string;
}

export interface RowRefused {
  readonly code:
    | 'row-quotes'
    | 'row-too-long'
    | 'row-too-short'
    | 'cell-missing'
    | 'cell-not-allowed'
    | 'cell-not-a-number'
    | 'cell-not-a-date'
    | 'cell-not-yes-no'
    | 'cell-not-valid'
    | 'cell-out-of-bounds'
    | 'date-far-away'
    | 'gtin-check-digit'
    | BikeFault['code']
    | 'frame-number-twice'
    | 'frame-number-known';
  readonly line: number;
  readonly column?: string;
  /** As it stands in the cell. */
  readonly value?: string;
  readonly allowed?: readonly string[];
  readonly firstLine?: number;
  /** Between which a number lies. */
  readonly min?: number;
  readonly max?: number;
  readonly unit?: string;
  /** Another cell that this one does not go with. */
  readonly other?: string;
  readonly otherValue?: string;
}

export interface RowFaulty {
  readonly code: 'row-faulty';
  readonly faults: readonly RowRefused[];
}

/** A promise for a day holds until the shop closes. */
const closingTime = '18:00';

type Cells = ReadonlyMap<string, string>;

export function readDeliveryRow(
  { line, cells: texts, isBroken }: CsvRow,
  names: readonly string[],
  today: string,
): Result<DeliveredBike, RowFaulty> {
  const faulty = (...faults: readonly RowRefused[]) =>
    refuse({ code: 'row-faulty', faults } as const);
  if (isBroken) return faulty({ code: 'row-quotes', line });
  if (texts.length > names.length) return faulty({ code: 'row-too-long', line });
  if (texts.length < names.length) return faulty({ code: 'row-too-short', line });

  const cells: Cells = new Map(names.map((name, index) => [name, texts[index] ?? '']));
  const faults: RowRefused[] = [];
  const description = emptyDescription();
  for (const column of deliveryColumns) {
    const text = textFor(column, cells);
    if (text === '') {
      if (column.required) faults.push({ code: 'cell-missing', line, column: column.name });
      continue;
    }
    const value = readCell(column, text);
    const fault = cellRefusal(column, text, value, today);
    if (fault !== undefined) faults.push({ line, column: column.name, value: text, ...fault });
    else if (value !== undefined) for (const place of column.fills) fill(description, place, value);
  }
  if (faults.length > 0) return faulty(...faults);

  const bike = bikeSchema.safeParse(description);
  if (!bike.success)
    return faulty(...bike.error.issues.map(({ path }) => invalid(path.join('.'), line, cells)));
  const { gtin } = bike.data;
  if (gtin !== undefined && !isGtin(gtin))
    return faulty({ code: 'gtin-check-digit', line, column: 'gtin', value: gtin });
  const faultsOfWhole = faultsOfBike(bike.data).filter(
    ({ column }) => !isLikeAnother(column, cells),
  );
  if (faultsOfWhole.length > 0)
    return faulty(...faultsOfWhole.map((fault) => ({ line, ...fault })));
  const [due, delivery] = [cells.get('due') ?? '', cells.get('delivery') ?? ''];
  return ok({
    line,
    bike: bike.data,
    ...(due !== '' && { due: `${due}T${closingTime}` }),
    ...(delivery !== '' && { delivery }),
  });
}

/** What stands in the cell, in the one it is like, or what is commonest for this kind of bike. */
function textFor({ name, likeColumn }: DeliveryColumn, cells: Cells): string {
  const own = cells.get(name) || cells.get(likeColumn ?? '') || '';
  if (own !== '') return own;
  const kind = bikeKinds.find((known) => known === cells.get('kind')?.toLowerCase());
  return kind === undefined ? '' : (deliveryDefaults[kind][name] ?? '');
}

/** A cell left empty takes another's text; what is wrong with that is named there. */
function isLikeAnother(name: string, cells: Cells): boolean {
  const column = deliveryColumns.find((one) => one.name === name);
  return column?.likeColumn !== undefined && (cells.get(name) ?? '') === '';
}

/** With every part that some column fills: a part of which nothing is said takes the schema's commonest values. */
function emptyDescription(): Description {
  const parts = deliveryColumns.flatMap(({ fills }) =>
    fills.filter((place) => place.includes('.')),
  );
  return Object.fromEntries(parts.map((place) => [place.split('.')[0] ?? place, {}]));
}

interface Description {
  [name: string]: CellValue | Description;
}

function fill(description: Description, place: string, value: CellValue): void {
  const path = place.split('.');
  const last = path.pop() ?? place;
  let part = description;
  for (const name of path) {
    const inner = part[name];
    const next: Description = isDescription(inner) ? inner : {};
    part[name] = next;
    part = next;
  }
  part[last] = value;
}

function isDescription(value: CellValue | Description | undefined): value is Description {
  return typeof value === 'object' && !Array.isArray(value);
}

/** The schema names a place in the bike; the person knows columns. */
function invalid(place: string, line: number, cells: Cells): RowRefused {
  const column = deliveryColumns.find(({ fills }) =>
    fills.some((filled) => place.startsWith(filled)),
  );
  if (column === undefined) return { code: 'cell-not-valid', line };
  return { code: 'cell-not-valid', line, column: column.name, value: cells.get(column.name) ?? '' };
}
