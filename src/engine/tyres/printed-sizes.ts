/** Finds the sizes in the print of a side wall, and what each could mean. */

import {
  beadSeatsByDecimalInch,
  beadSeatsByFractionInch,
  beadSeatsByFrench,
  knownBeadSeats,
  narrowDecimalInch,
} from './bead-seats';

/** Two numbers in mm (ETRTO, ISO 5775-1), French, or inches. */
export type SizeSystem = 'etrto' | 'french' | 'inch';

export interface PrintedSize {
  readonly system: SizeSystem;
  /** As printed, in plain characters. */
  readonly text: string;
  /** Nominal width, mm. */
  readonly width: number;
  /** The bead seats, mm, that this print is used for; none when the size is not known. */
  readonly beadSeats: readonly number[];
}

const fraction = String.raw`[1-9]\d?/(?:2|4|8|16)(?!\d)`;
const length = String.raw`(?:\d{1,3} ${fraction}|${fraction}|\d{1,3}(?:\.\d+)?)`;
const etrto = /(?<![\d./-])(\d{2,3}) ?- ?(\d{3})(?![\d./]| ?(?:kpa|bar|psi|p\.s\.i))/g;
const outside = new RegExp(
  String.raw`(?<![\d./-])(\d{1,3} ${fraction}|\d{1,3}(?:\.\d+)?) ?([a-d](?![a-z]))?\+? ?x ?(${length})(?: ?x ?(${length}))? ?([a-d](?![a-z]))?(?![\d/])`,
  'g',
);

/** The sizes of a marking, and what is left of it when they are taken out. Widths that no tyre has are not sizes. */
export function printedSizes(marking: string): {
  readonly sizes: readonly PrintedSize[];
  readonly rest: string;
} {
  const sizes: PrintedSize[] = [];
  const keep = (size: PrintedSize) => {
    const hasTyreWidth = size.width >= 16 && size.width <= 135; // not so for a fraction after a French size
    if (!hasTyreWidth) return size.text;
    sizes.push(size);
    return ' ';
  };
  const rest = plain(marking)
    .replace(etrto, (text, width, seat) => keep(etrtoSize(text, Number(width), Number(seat))))
    .replace(outside, (text, diameter, before, width, second, after) =>
      keep(outsideSize(text, diameter, width, second, before ?? after)),
    );
  return { sizes, rest };
}

/** One spelling for what is printed in many: ″ and spaces go, × is x, a comma is a point, ½ and 1-1/2 are fractions. */
function plain(marking: string): string {
  return marking
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign.normalize('NFKC')}`)
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\u2044/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[×✕*]/g, 'x')
    .replace(/["″”]|''|′′|(?<=\d) ?in(?:ch)?\b\.?/g, ' ')
    .replace(/(\d),(?=\d)/g, '$1.')
    .replace(/(?<!\d)(\d{1,2})-(?=\d\/\d)/g, '$1 ')
    .replace(/\s+/g, ' ');
}

function etrtoSize(text: string, width: number, seat: number): PrintedSize {
  const beadSeats = knownBeadSeats.includes(seat) ? [seat] : [];
  return { system: 'etrto', text: text.trim(), width, beadSeats };
}

function outsideSize(
  text: string,
  diameter: string,
  width: string,
  second: string | undefined,
  letter: string | undefined,
): PrintedSize {
  const size = { text: text.trim() };
  if (Number(diameter) >= 100) {
    const beadSeats = frenchSeats(diameter, letter);
    return { ...size, system: 'french', width: Number(width), beadSeats };
  }
  // Of three numbers the middle or the last is the height; the smaller is the width.
  const widths = second === undefined ? [width] : [width, second];
  const narrowest = Math.min(...widths.map(millimetresOf));
  return { ...size, system: 'inch', width: narrowest, beadSeats: inchSeats(diameter, widths) };
}

function frenchSeats(diameter: string, letter: string | undefined): readonly number[] {
  const seats = beadSeatsByFrench[diameter] ?? {};
  // Without a letter 700 is read as 700C: the other three are long out of use (common practice, no source).
  const meant = letter ?? (diameter === '700' ? 'c' : undefined);
  if (meant === undefined) return Object.values(seats).sort((a, b) => a - b);
  const seat = seats[meant];
  return seat === undefined ? [] : [seat];
}

function inchSeats(diameter: string, widths: readonly string[]): readonly number[] {
  // 28 × 1 5/8 × 1 3/8 and its like all name the 622 seat (ETRTO tables, from memory).
  if (diameter === '28' && widths.length > 1) return [622];
  const seats = widths.flatMap((width) => inchSeatsOf(diameter, width));
  return [...new Set(seats)].sort((a, b) => a - b);
}

function inchSeatsOf(diameter: string, width: string): readonly number[] {
  const byFraction = beadSeatsByFractionInch[`${diameter} x ${width}`];
  if (byFraction) return byFraction;
  if (width.includes('/')) return [];
  const narrow = narrowDecimalInch[diameter];
  if (narrow && Number(width) <= narrow.widest) return narrow.beadSeats;
  return beadSeatsByDecimalInch[diameter.replace('12.5', '12 1/2')] ?? [];
}

/** The nominal widths that go with the printed fractions (ETRTO pairs such as 37-590 for 26 × 1 3/8, from memory). */
const millimetresByFraction: Readonly<Record<string, number>> = {
  '7/8': 20,
  '1': 25,
  '1 1/8': 28,
  '1 1/4': 32,
  '1 3/8': 37,
  '1 1/2': 40,
  '1 5/8': 44,
  '1 3/4': 47,
};

function millimetresOf(width: string): number {
  return millimetresByFraction[width] ?? Math.round(inches(width) * 25.4);
}

function inches(width: string): number {
  return width.split(' ').reduce((sum, part) => {
    const [above = '0', below = '1'] = part.split('/');
    return sum + Number(above) / Number(below);
  }, 0);
}
