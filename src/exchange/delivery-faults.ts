/** What makes a bike of a delivery list one that could never be planned, by the column to look at again. */

import { type Bike, contradictionsIn, type Feature } from '../engine/bike';
import { type TyreEntryRefusal, tyreEntryFaults } from '../engine/plan';
import { deliveryColumns } from './delivery-columns';

export interface BikeFault {
  readonly code:
    | 'cell-no-tyre-size'
    | 'cell-no-pressure'
    | 'cell-pressure-unlikely'
    | 'cell-tyre-too-narrow'
    | 'cell-pressure-above-rim'
    | 'cells-at-odds';
  readonly column: string;
  /** As the bike has it, which an empty cell may have taken from another. */
  readonly value: string;
  readonly other?: string;
  readonly otherValue?: string;
}

const codes = {
  'tyre-not-understood': 'cell-no-tyre-size',
  'tyre-pressure-not-understood': 'cell-no-pressure',
  'tyre-pressure-unlikely': 'cell-pressure-unlikely',
  'tyre-narrower-than-rim': 'cell-tyre-too-narrow',
  'tyre-window-empty': 'cell-pressure-above-rim',
} as const satisfies Record<TyreEntryRefusal['code'], BikeFault['code']>;

/** Every fault of the whole, where each cell by itself can be. */
export function faultsOfBike(bike: Bike): readonly BikeFault[] {
  const tyres = (['front', 'rear'] as const).flatMap((wheel) =>
    tyreEntryFaults(wheel, bike[wheel]).map(({ place, refusal }) => ({
      code: codes[refusal.code],
      column: columnOf(place),
      value: (place.endsWith('.tyre') ? bike[wheel].tyre : bike[wheel].tyrePressure) ?? '',
    })),
  );
  return [...tyres, ...contradictionsIn(bike).map(({ one, other }) => atOdds(one, other))];
}

function atOdds(one: Feature, other: Feature): BikeFault {
  return {
    code: 'cells-at-odds',
    column: columnOf(one.question),
    value: String(one.answer),
    other: columnOf(other.question),
    otherValue: String(other.answer),
  };
}

function columnOf(place: string): string {
  return deliveryColumns.find(({ fills }) => fills.includes(place))?.name ?? place;
}
