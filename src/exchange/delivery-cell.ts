/** One cell of a delivery list, read as its column says. A cell is only ever text: nothing in it is worked out. */

import { checkEntry } from '../engine/bike';
import type { DeliveryColumn } from './delivery-columns';

export type CellValue = string | number | boolean | readonly string[];

export type CellRefused = {
  readonly code:
    | 'cell-not-allowed'
    | 'cell-not-a-number'
    | 'cell-not-a-date'
    | 'cell-not-yes-no'
    | 'cell-out-of-bounds'
    | 'date-far-away';
  readonly allowed?: readonly string[];
  readonly min?: number;
  readonly max?: number;
  readonly unit?: string;
};

/** Undefined when the text is not what its column reads. */
export function readCell(column: DeliveryColumn, text: string): CellValue | undefined {
  switch (column.reads) {
    case 'text':
      return text;
    case 'choice':
      return choiceIn(column, text);
    case 'choices':
      return choicesIn(column, text);
    case 'number':
      return numberIn(column, text);
    case 'yes-no':
      return { yes: true, no: false }[text.toLowerCase()];
    case 'date':
      return isDate(text) ? text : undefined;
  }
}

export function cellRefusal(
  column: DeliveryColumn,
  text: string,
  value: CellValue | undefined,
  today: string,
): CellRefused | undefined {
  if (typeof value === 'number') return beyondBounds(column, value);
  if (value !== undefined)
    return column.reads === 'date' && isFarAway(text, today)
      ? { code: 'date-far-away' }
      : undefined;
  if (column.reads === 'date') return { code: 'cell-not-a-date' };
  if (column.reads === 'yes-no') return { code: 'cell-not-yes-no' };
  if (column.allowed !== undefined) return { code: 'cell-not-allowed', allowed: column.allowed };
  return { code: 'cell-not-a-number' };
}

/** A column that fills both wheels has the same bounds for each. */
function beyondBounds({ fills: [place = ''] }: DeliveryColumn, value: number) {
  const checked = checkEntry(place, value);
  if (checked.ok) return undefined;
  const { min, max, unit } = checked.refusal;
  return { code: 'cell-out-of-bounds', min, max, unit } as const;
}

function choiceIn({ allowed = [] }: DeliveryColumn, text: string): string | undefined {
  return allowed.find((choice) => choice === text.toLowerCase());
}

function choicesIn(column: DeliveryColumn, text: string): readonly string[] | undefined {
  const choices = text.split(';').map((part) => part.trim());
  const read = choices.filter(Boolean).map((choice) => choiceIn(column, choice));
  return read.every((choice) => choice !== undefined) ? read : undefined;
}

/** A decimal comma is read too, because lists with semicolons have it. */
function numberIn({ allowed }: DeliveryColumn, text: string): number | undefined {
  if (!/^\d+([.,]\d+)?$/.test(text)) return undefined;
  if (allowed !== undefined && !allowed.includes(text)) return undefined;
  return Number(text.replace(',', '.'));
}

function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
}

/** Two years either way: a mistyped year, not a promise. */
function isFarAway(date: string, today: string): boolean {
  return Math.abs(Date.parse(date) - Date.parse(today)) > 2 * 366 * 24 * 60 * 60 * 1000;
}
