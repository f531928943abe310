/** Which bead seat diameter a printed tyre size means: inch and French sizes name the outside, not the seat. */

/**
 * Bead seats by diameter in inches, for widths printed as decimals (or as whole inches from 2 up).
 * Source: ETRTO tables (from memory); 26 × 1.75 and 29 × 2.25 also as printed by tyre makers.
 */
export const beadSeatsByDecimalInch: Readonly<Record<string, readonly number[]>> = {
  '10': [152],
  '12': [203],
  '12 1/2': [203],
  '14': [254],
  '16': [305],
  '18': [355],
  '20': [406],
  '22': [457],
  '24': [507],
  '26': [559],
  '27.5': [584],
  '28': [622],
  '29': [622],
  '32': [686],
  '36': [787],
};

/** Up to this width, in inches, these diameters are also printed on tyres for an older, larger seat (from memory). */
export const narrowDecimalInch: Readonly<
  Record<string, { readonly widest: number; readonly beadSeats: readonly number[] }>
> = {
  '16': { widest: 1.35, beadSeats: [305, 349] },
  '20': { widest: 1.25, beadSeats: [406, 451] },
  '24': { widest: 1.1, beadSeats: [507, 520] },
  '26': { widest: 1.1, beadSeats: [559, 571] },
};

/**
 * Bead seats by diameter and width, for widths printed as fractions of an inch. More than one seat: the same print was
 * used for tyres that do not interchange. Source: ETRTO tables (from memory); 28 × 1 3/8 as 642: restorers' rim tables.
 */
export const beadSeatsByFractionInch: Readonly<Record<string, readonly number[]>> = {
  '8 x 1 1/4': [137],
  '12 1/2 x 1 3/8': [203],
  '12 1/2 x 2 1/4': [203],
  '14 x 1 3/8': [288, 298],
  '16 x 1 1/4': [349],
  '16 x 1 3/8': [335, 337, 340, 349],
  '17 x 1 1/4': [369],
  '18 x 1 3/8': [390, 400],
  '20 x 1 1/8': [451],
  '20 x 1 1/4': [438, 451],
  '20 x 1 3/8': [451],
  '20 x 1 3/4': [419],
  '22 x 1 3/8': [489, 501],
  '24 x 1': [520],
  '24 x 1 1/8': [520, 540],
  '24 x 1 1/4': [540, 547],
  '24 x 1 3/8': [540],
  '26 x 1': [571],
  '26 x 1 1/4': [597],
  '26 x 1 3/8': [590],
  '26 x 1 1/2': [584],
  '26 x 1 3/4': [571],
  '27 x 1': [630],
  '27 x 1 1/8': [630],
  '27 x 1 1/4': [630],
  '27 x 1 3/8': [630],
  '28 x 7/8': [622],
  '28 x 1': [622],
  '28 x 1 1/8': [622],
  '28 x 1 1/4': [622],
  '28 x 1 3/8': [622, 642],
  '28 x 1 1/2': [635],
  '28 x 1 5/8': [622],
  '28 x 1 3/4': [622],
};

/** Bead seats by French diameter and letter; without a letter any of them may be meant. Source: ISO 5775-1 (from memory). */
export const beadSeatsByFrench: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  '400': { a: 340 },
  '450': { a: 390 },
  '500': { a: 440 },
  '550': { a: 490 },
  '600': { a: 541 },
  '650': { a: 590, b: 584, c: 571 },
  '700': { a: 642, b: 635, c: 622, d: 587 },
};

/** Seats that are only ever printed in the two-number form. Source: ISO 5775-2 and ETRTO tables (from memory). */
const otherBeadSeats = [
  239, 251, 279, 317, 330, 355, 357, 387, 400, 428, 432, 484, 531, 534, 565, 609,
] as const;

/** Every seat that a printed two-number size may name, in mm, smallest first. Another number is a misreading. */
export const knownBeadSeats: readonly number[] = [
  ...new Set([
    ...Object.values(beadSeatsByDecimalInch).flat(),
    ...Object.values(narrowDecimalInch).flatMap(({ beadSeats }) => beadSeats),
    ...Object.values(beadSeatsByFractionInch).flat(),
    ...Object.values(beadSeatsByFrench).flatMap((seats) => Object.values(seats)),
    ...otherBeadSeats,
  ]),
].sort((a, b) => a - b);
