/** Wheels in mm, from what is printed on the tyres. */

import type { Bike } from '../../engine/bike';
import type { Proportions } from './proportions';
import { tyreSize } from './tyre-size';
import { type Point, point } from './vector';

export interface WheelGeometry {
  readonly end: 'front' | 'rear';
  readonly centre: Point;
  /** To the tread: half the bead seat diameter and the tyre's width (ISO 5775-1 geometry). */
  readonly radius: number;
  readonly tyreWidth: number;
  readonly rimOuter: number;
  readonly rimInner: number;
  readonly knobs: boolean;
  readonly spokes: number;
  /** The hub's shell as seen from the side. */
  readonly hub: number;
  readonly rotor: number | undefined;
  readonly axle: Bike['front']['axle'];
}

const discBrakes: readonly string[] = ['hydraulic-disc', 'cable-disc'];
const offRoad: readonly string[] = [
  'mountain-hardtail',
  'mountain-full-suspension',
  'bmx',
  'gravel',
];

export function hasDisc(brake: Bike['front']['brake']): boolean {
  return discBrakes.includes(brake);
}

export function wheelOf(
  bike: Bike,
  end: 'front' | 'rear',
  usual: Proportions,
  x: number,
): WheelGeometry {
  const [width, beadSeat] = tyreSize(bike[end].tyre, usual.usualTyre);
  const radius = beadSeat / 2 + width;
  const small = beadSeat < 450;
  return {
    end,
    centre: point(x, -radius),
    radius,
    tyreWidth: width,
    rimOuter: beadSeat / 2 + 6,
    rimInner: beadSeat / 2 - (small ? 12 : 16),
    knobs: offRoad.includes(bike.kind),
    spokes: usual.spokes,
    hub: hubRadius(bike, end),
    rotor: hasDisc(bike[end].brake) ? rotorRadius(bike.kind, small) : undefined,
    axle: bike[end].axle,
  };
}

function rotorRadius(kind: Bike['kind'], small: boolean): number {
  if (small) return 70;
  return kind.startsWith('mountain') || kind === 'cargo' ? 90 : 80;
}

function hubRadius(bike: Bike, end: 'front' | 'rear'): number {
  const { brake } = bike[end];
  if (end === 'rear' && bike.assist === 'hub-motor') return 82;
  if (brake === 'drum') return 52;
  if (brake === 'roller') return 48;
  if (end === 'rear' && bike.gears.kind === 'hub') return 42;
  if (end === 'front' && bike.extras.includes('dynamo-lights')) return 38;
  return brake === 'coaster' ? 32 : 24;
}
