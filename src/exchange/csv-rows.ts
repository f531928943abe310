/** Rows of a CSV file (RFC 4180) with the line on which each begins. */

import Papa from 'papaparse';

export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** A quote that was not closed, or stands where none may. */
  readonly isBroken: boolean;
}

/** Separated by commas, or by semicolons where the first line has only those. Empty lines are left out. */
export function csvRows(text: string): readonly CsvRow[] {
  const whole = text.replace(/^\uFEFF/, '');
  const { data, errors } = Papa.parse<string[]>(whole, { delimiter: delimiterOf(whole) });
  const broken = new Set(errors.flatMap(({ row }) => (row === undefined ? [] : [row])));
  const rows: CsvRow[] = [];
  let line = 1;
  for (const [index, cells] of data.entries()) {
    if (cells.some((cell) => cell.trim() !== ''))
      rows.push({ line, cells: cells.map((cell) => cell.trim()), isBroken: broken.has(index) });
    line += 1 + cells.reduce((breaks, cell) => breaks + lineBreaksIn(cell), 0);
  }
  return rows;
}

function delimiterOf(text: string): ',' | ';' {
  const [header = ''] = text.split(/\r\n|\n|\r/, 1);
  return header.includes(';') && !header.includes(',') ? ';' : ',';
}

function lineBreaksIn(cell: string): number {
  return cell.match(/\r\n|\n|\r/g)?.length ?? 0;
}
