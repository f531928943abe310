/** Reads the pressure printed on a tyre, and what it allows. */

import { ok, type Result, refuse } from '../base';
import {
  type Kilopascals,
  kilopascals,
  type MarkingRefusal,
  type PressureMarking,
  parsePressureMarking,
} from '../units';

export interface PressureLimits {
  readonly min?: Kilopascals;
  readonly max?: Kilopascals;
}

export interface PrintedPressure {
  readonly limits: PressureLimits;
  /** As printed, and whether its units disagree. */
  readonly marking: PressureMarking;
}

/** Makers round both units for the eye (6.0 bar beside 85 psi); a difference beyond this share is a misreading. */
const mostlyRounding = 0.1;

/**
 * What a pressure marking allows, in kPa. A figure printed alone is never to be exceeded (`inflate to 400 kPa`,
 * ISO 5775-1). Where its units disagree the more cautious bounds are taken (the greatest minimum, the least maximum),
 * unless the units are more than a tenth apart or leave no pressure that suits both: that is refused.
 */
export function pressureLimits(
  marking: PressureMarking,
): Result<PressureLimits, PressureUnitsDisagree> {
  const { figure, printed, disagree } = marking;
  const { mins, maxes } = boundsOf(printed);
  const min = figure ? figure.min : greatest(mins);
  const max = figure ? (figure.max ?? figure.target) : least(maxes);
  const farApart = disagree && Math.max(spread(mins), spread(maxes)) > mostlyRounding;
  if (farApart || (min ?? 0) > (max ?? Number.POSITIVE_INFINITY)) {
    return refuse({ code: 'pressure-units-disagree', printed });
  }
  return ok({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) });
}
export type PressureUnitsDisagree = {
  readonly code: 'pressure-units-disagree';
  readonly printed: PressureMarking['printed'];
};

function boundsOf(printed: PressureMarking['printed']) {
  return {
    mins: printed.flatMap(({ inBaseUnit: { min } }) => min ?? []),
    maxes: printed.flatMap(({ inBaseUnit: { max, target } }) => max ?? target ?? []),
  };
}

function greatest(pressures: readonly number[]): Kilopascals | undefined {
  return pressures.length === 0 ? undefined : kilopascals(Math.max(...pressures));
}

function least(pressures: readonly number[]): Kilopascals | undefined {
  return pressures.length === 0 ? undefined : kilopascals(Math.min(...pressures));
}

function spread(pressures: readonly number[]): number {
  if (pressures.length === 0) return 0;
  return 1 - Math.min(...pressures) / Math.max(...pressures);
}

const pressureWords =
  /^(?:(?:min|max)(?:i|imum)?|inflate|pressure|up|to|or|at|least|do|not|exceed|psi|[psi]|bars?|k|pa|kpa|lbs?|per|sq|in)$/;

/**
 * The pressure in what is left of a marking when its sizes are taken out, or nothing when none is printed. Words that say
 * nothing about pressure (tubeless, a name) are passed over; numbers never are.
 */
export function pressureIn(
  rest: string,
): Result<PrintedPressure, MarkingRefusal | PressureUnitsDisagree> | undefined {
  const words = rest.replace(/\p{L}+/gu, (word) => (pressureWords.test(word) ? word : ' '));
  if (!/\d/.test(words)) return undefined;
  const marking = parsePressureMarking(words.replace(sizeRemains, ' '));
  if (!marking.ok) return marking;
  const limits = pressureLimits(marking.value);
  return limits.ok ? ok({ limits: limits.value, marking: marking.value }) : limits;
}

/** Empty brackets, and dashes or strokes that no longer stand between numbers. */
const sizeRemains = /[([]\s*[)\]]|(?<!\d\s*)[-/|](?!\s*\d)/g;
