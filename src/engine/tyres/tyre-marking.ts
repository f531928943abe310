/** Reads what is printed on a tyre: its size in any of the three systems, and its pressure. */

import { ok, type Result, refuse } from '../base';
import { type MarkingRefusal, type Millimetres, millimetres, type PressureMarking } from '../units';
import { type PrintedSize, printedSizes } from './printed-sizes';
import { type PressureLimits, type PressureUnitsDisagree, pressureIn } from './tyre-pressure';

export interface TyreSize {
  /** Nominal width, mm. */
  readonly width: Millimetres;
  /** Bead seat diameter, mm. */
  readonly beadSeat: Millimetres;
}

export interface Tyre extends TyreSize, PressureLimits {}

export interface TyreMarking extends Tyre {
  readonly printed: readonly PrintedSize[];
  readonly pressure?: PressureMarking;
}

/**
 * Reads a tyre marking such as `57-622`, `700 x 38C`, `26 x 1.75`, or `27.5 x 2.4 (61-584) 40-65 psi`: widths and bead
 * seats in mm, pressures in kPa. A pressure printed alone is the maximum. Refuses a size that tyres of different bead
 * seats carry, with the choices; sizes that disagree; and a pressure that is not understood or whose units are far apart.
 * Source: ISO 5775-1.
 */
export function parseTyreMarking(text: string): Result<TyreMarking, TyreMarkingRefusal> {
  const { sizes, rest } = printedSizes(text);
  const beadSeat = beadSeatOf(text, sizes);
  if (!beadSeat.ok) return beadSeat;
  const named = sizes.find(({ system }) => system === 'etrto') ?? frenchOrFirst(sizes);
  if (named === undefined) return refuse({ code: 'tyre-size-missing', text });
  const pressure = pressureIn(rest);
  if (pressure && !pressure.ok) return refuse({ ...pressure.refusal, text });
  return ok({
    width: millimetres(named.width),
    beadSeat: millimetres(beadSeat.value),
    ...(pressure && { ...pressure.value.limits, pressure: pressure.value.marking }),
    printed: sizes,
  });
}
export type TyreMarkingRefusal = TyreSizeRefusal | PressureUnitsDisagree | MarkingRefusal;

export type TyreSizeRefusal =
  | { readonly code: 'tyre-size-missing'; readonly text: string }
  | { readonly code: 'tyre-size-unknown'; readonly text: string; readonly size: string }
  | {
      readonly code: 'tyre-size-ambiguous';
      readonly text: string;
      readonly choices: readonly number[];
    }
  | {
      readonly code: 'tyre-sizes-disagree';
      readonly text: string;
      readonly printed: readonly PrintedSize[];
    };

/** The two-number form decides; other forms must not contradict it; without it they must leave one seat between them. */
function beadSeatOf(text: string, sizes: readonly PrintedSize[]): Result<number, TyreSizeRefusal> {
  const [first] = sizes;
  if (first === undefined) return refuse({ code: 'tyre-size-missing', text });
  const unknown = sizes.find(({ beadSeats }) => beadSeats.length === 0);
  const decided = sizes.some(({ system, beadSeats }) => system === 'etrto' && beadSeats.length > 0);
  if (unknown && (!decided || unknown.system === 'etrto')) {
    return refuse({ code: 'tyre-size-unknown', text, size: unknown.text });
  }
  const known = sizes.map(({ beadSeats }) => beadSeats).filter((seats) => seats.length > 0);
  const [choice, ...others] = (known[0] ?? []).filter((seat) =>
    known.every((seats) => seats.includes(seat)),
  );
  if (choice === undefined) return refuse({ code: 'tyre-sizes-disagree', text, printed: sizes });
  if (others.length === 0) return ok(choice);
  return refuse({ code: 'tyre-size-ambiguous', text, choices: [choice, ...others] });
}

function frenchOrFirst(sizes: readonly PrintedSize[]): PrintedSize | undefined {
  return sizes.find(({ system }) => system === 'french') ?? sizes[0];
}
