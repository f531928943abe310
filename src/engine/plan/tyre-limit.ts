/** The pressures that a wheel's tyre and rim allow, from what is printed on them. */

import { ok, type Result, refuse } from '../base';
import type { Bike } from '../bike';
import {
  type InflationWindow,
  inflationWindow,
  type PressureUnitsDisagree,
  parseTyreMarking,
  pressureLimits,
  rimFits,
  suggestInflation,
  type Tyre,
  type TyreMarkingRefusal,
} from '../tyres';
import { kilopascals, type MarkingRefusal, millimetres, parsePressureMarking } from '../units';
import type { PlanMeasure } from './plan.schema';

export type Wheel = 'front' | 'rear';

/** What a wheel's description says of its tyre and rim. */
export type TyreAndRim = Pick<
  Bike[Wheel],
  'tyre' | 'tyrePressure' | 'rimMaxKpa' | 'rimInnerWidth' | 'hookless'
>;

/**
 * The window of one wheel in kPa (gauge) and where to aim in it with no rider known. Without a known maximum the limit
 * holds no number and says where to read it. Refuses a size or pressure marking that is not understood (with the
 * cause), a tyre that is no wider than its rim, and one that asks for more than its rim allows.
 */
export function tyreLimit(
  wheel: Wheel,
  fitted: TyreAndRim,
): Result<Pick<PlanMeasure, 'limit' | 'suggested'>, TyreLimitRefusal> {
  const tyre = tyreOf(wheel, fitted);
  if (!tyre.ok) return tyre;
  const rimInner = fitted.rimInnerWidth;
  if (rimInner !== undefined && tyre.value.width <= rimInner)
    return refuse({ code: 'tyre-narrower-than-rim', wheel, width: tyre.value.width, rimInner });
  const window = inflationWindow({
    tyre: tyre.value,
    rim: {
      hookless: fitted.hookless,
      ...(fitted.rimMaxKpa !== undefined && { max: kilopascals(fitted.rimMaxKpa) }),
    },
  });
  if (!window.ok) {
    if (window.refusal.code === 'tyre-maximum-unknown') return ok({ limit: readItOnTheTyre });
    const { min, max, limitedBy } = window.refusal;
    return refuse({ code: 'tyre-window-empty', wheel, min, max, limitedBy });
  }
  const suggested = suggestInflation({ window: window.value, width: tyre.value.width });
  const { min, max, limitedBy } = window.value;
  return ok({
    limit: { max, source: ceilingSources[limitedBy], ...(min !== undefined && { min }) },
    ...(suggested !== undefined && { suggested }),
  });
}
export type TyreLimitRefusal =
  | {
      readonly code: 'tyre-not-understood';
      readonly wheel: Wheel;
      readonly marking: string;
      /** Why, with the choices where there are some. */
      readonly cause: TyreMarkingRefusal;
    }
  | {
      readonly code: 'tyre-pressure-not-understood';
      readonly wheel: Wheel;
      readonly marking: string;
      readonly cause: MarkingRefusal | PressureUnitsDisagree;
    }
  | {
      readonly code: 'tyre-narrower-than-rim';
      readonly wheel: Wheel;
      /** mm. */
      readonly width: number;
      readonly rimInner: number;
    }
  | (Required<InflationWindow> & { readonly code: 'tyre-window-empty'; readonly wheel: Wheel });

/**
 * What to heed before inflating: a tyre whose width is unusual on its rim, by the description. Nothing where the rim's
 * width is not known or the marking is not understood. Source: the table of `rimFits`.
 */
export function rimCaution(fitted: Bike[Wheel]): string | undefined {
  const { rimInnerWidth } = fitted;
  const tyre = parseTyreMarking(fitted.tyre);
  if (rimInnerWidth === undefined || !tyre.ok) return undefined;
  const { width } = tyre.value;
  if (rimFits(width, millimetres(rimInnerWidth))) return undefined;
  return `A tyre of ${width} mm is unusual on a rim of ${rimInnerWidth} mm inside: ask both makers before inflating it.`;
}

const readItOnTheTyre = { source: 'not known: read it on the side wall before inflating' } as const;

const ceilingSources = {
  tyre: 'printed on the tyre',
  rim: 'the rim’s own maximum, lower than the tyre’s',
  hookless: '5 bar on a hookless rim (ISO 4210-1, ETRTO), lower than the tyre’s',
} as const satisfies Record<InflationWindow['limitedBy'], string>;

/** The pressure written down for the wheel goes before one printed beside the size. */
function tyreOf(wheel: Wheel, fitted: TyreAndRim): Result<Tyre, TyreLimitRefusal> {
  const size = parseTyreMarking(fitted.tyre);
  if (!size.ok) {
    return refuse({
      code: 'tyre-not-understood',
      wheel,
      marking: fitted.tyre,
      cause: size.refusal,
    });
  }
  if (fitted.tyrePressure === undefined) return size;
  const marking = fitted.tyrePressure;
  const pressure = parsePressureMarking(marking);
  const limits = pressure.ok ? pressureLimits(pressure.value) : pressure;
  if (!limits.ok) {
    const cause = limits.refusal;
    return refuse({ code: 'tyre-pressure-not-understood', wheel, marking, cause });
  }
  const { width, beadSeat } = size.value;
  return ok({ width, beadSeat, ...limits.value });
}
