/** A delivery list: every row that makes a bike, and every row that does not with its line and the reason. */

import { ok, type Result, refuse } from '../engine/base';
import { type CsvRow, csvRows } from './csv-rows';
import { deliveryColumns } from './delivery-columns';
import { type DeliveredBike, type RowRefused, readDeliveryRow } from './delivery-row';

export interface DeliveryReading {
  readonly rows: readonly DeliveredBike[];
  /** In the order of the file; a row may have more than one fault. */
  readonly refused: readonly RowRefused[];
}

export interface DeliveryContext {
  readonly knownFrameNumbers: ReadonlySet<string>;
  /** ISO date. */
  readonly today: string;
}

/** Far more than a lorry brings. */
const longestText = 1024 * 1024;

/**
 * Reads and judges; keeps nothing. Refuses the whole list when its text or its header cannot be what it says; otherwise
 * bad rows are named and good rows stay good.
 */
export function readDeliveryList(
  text: string,
  context: DeliveryContext,
): Result<DeliveryReading, DeliveryListRefusal> {
  if (text.length > longestText)
    return refuse({ code: 'list-too-large', size: text.length, limit: longestText });
  if (text.includes('\0') || text.includes('\uFFFD')) return refuse({ code: 'list-not-text' });
  const [header, ...rows] = csvRows(text);
  if (header === undefined) return refuse({ code: 'list-empty' });
  const names = header.cells.map((cell) => cell.toLowerCase());
  const fault = headerFault(names);
  if (fault !== undefined) return refuse(fault);
  return ok(judged(rows, names, context));
}
export type DeliveryListRefusal =
  | { readonly code: 'list-too-large'; readonly size: number; readonly limit: number }
  | { readonly code: 'list-not-text' | 'list-empty' | 'list-header-missing' }
  | {
      readonly code: 'list-columns-unknown' | 'list-columns-missing' | 'list-columns-twice';
      readonly columns: readonly string[];
    };

function headerFault(names: readonly string[]): DeliveryListRefusal | undefined {
  const known = deliveryColumns.map(({ name }) => name);
  if (!names.some((name) => known.includes(name))) return { code: 'list-header-missing' };
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length > 0) return { code: 'list-columns-unknown', columns: unknown };
  const twice = names.filter((name, index) => names.indexOf(name) !== index);
  if (twice.length > 0) return { code: 'list-columns-twice', columns: [...new Set(twice)] };
  const missing = deliveryColumns.flatMap(({ name, required }) =>
    required && !names.includes(name) ? [name] : [],
  );
  return missing.length > 0 ? { code: 'list-columns-missing', columns: missing } : undefined;
}

function judged(
  rows: readonly CsvRow[],
  names: readonly string[],
  { knownFrameNumbers, today }: DeliveryContext,
): DeliveryReading {
  const good: DeliveredBike[] = [];
  const refused: RowRefused[] = [];
  const lineByFrame = new Map<string, number>();
  for (const row of rows) {
    const read = readDeliveryRow(row, names, today);
    if (!read.ok) {
      refused.push(...read.refusal.faults);
      continue;
    }
    const { line } = row;
    const { frameNumber } = read.value.bike;
    const seat = { line, column: 'frame_number', value: frameNumber };
    const firstLine = lineByFrame.get(frameNumber);
    if (firstLine !== undefined) refused.push({ code: 'frame-number-twice', ...seat, firstLine });
    else if (knownFrameNumbers.has(frameNumber))
      refused.push({ code: 'frame-number-known', ...seat });
    else {
      lineByFrame.set(frameNumber, line);
      good.push(read.value);
    }
  }
  return { rows: good, refused };
}
