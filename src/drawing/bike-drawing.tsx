/** The bike, drawn in line from its own description, drive side towards us, with the place of the work lit. */

import { useId, useMemo } from 'react';
import type { Zone } from '../engine/base';
import type { Bike, Place } from '../engine/bike';
import { type BikeGeometry, geometryOf } from './bike-geometry';
import styles from './drawing.module.css';
import type { PartName } from './part-names';
import { FarBrake, NearBrake } from './parts/brakes';
import { Chainguard } from './parts/chainguard';
import { Cables, Cockpit } from './parts/cockpit';
import { armsOf, Chainrings, FarCrank, NearCrank } from './parts/drive';
import { Basket, Bell, FarFittings, MiddleFittings, NearFittings } from './parts/fittings';
import { Fork } from './parts/fork';
import { HeadTube, MainTubes, Stays } from './parts/frame';
import { Mudguard } from './parts/mudguards';
import { LitParts } from './parts/part';
import { Chain, ChainOutside, FrontDerailleur, RearDerailleur, Sprockets } from './parts/rear-gear';
import { Seat } from './parts/seat';
import { FarTandem, NearTandem, RearSeat } from './parts/tandem';
import { AxleEnd, QuickLever, Wheel } from './parts/wheel';
import { classOfDrawing, type Tone } from './pen';
import { placeOnBike, type Spot, zoneOnBike } from './places-on-bike';

/** What stands out: a whole zone, or one place, on its left side when it says so. */
export type Lit =
  | { readonly zone: Zone }
  | { readonly place: Place; readonly side?: 'left' | 'right' | 'both' | 'middle' };

export interface BikeDrawingProps {
  readonly bike: Bike;
  readonly lit?: Lit | undefined;
  readonly tone?: Tone;
  /** What the picture shows, for those who do not see it. */
  readonly title: string;
}

export function BikeDrawing({ bike, lit, tone = 'screen', title }: BikeDrawingProps) {
  const geometry = useMemo(() => geometryOf(bike), [bike]);
  const titleId = useId();
  const { x, y, width, height } = geometry.box;
  const { parts, circle } = shownFor(geometry, lit);
  const onFarSide = lit && 'side' in lit && lit.side === 'left';
  return (
    <svg
      className={classOfDrawing(geometry, tone)}
      viewBox={`${Math.round(x)} ${Math.round(y)} ${Math.round(width)} ${Math.round(height)}`}
      role="img"
      aria-labelledby={titleId}
    >
      <title id={titleId}>{title}</title>
      {onFarSide && circle && <Circle spot={circle} />}
      <LitParts value={new Set(parts)}>
        <BikeParts geometry={geometry} />
      </LitParts>
      {!onFarSide && circle && <Circle spot={circle} />}
    </svg>
  );
}

function shownFor(geometry: BikeGeometry, lit: Lit | undefined) {
  if (!lit) return { parts: [] as readonly PartName[], circle: undefined };
  if ('zone' in lit) return zoneOnBike(geometry, lit.zone);
  if (lit.place === 'whole-bike') return zoneOnBike(geometry, 'whole-bike');
  return { parts: [lit.place] as readonly PartName[], circle: placeOnBike(geometry, lit.place) };
}

function Circle({ spot }: { spot: Spot }) {
  return (
    <circle
      className={styles.ring}
      data-ring="lit"
      cx={spot.x}
      cy={spot.y}
      r={spot.r}
      strokeDasharray="14 15"
    />
  );
}

/** Everything, from the far side to the near one, so that what is nearer covers what is behind. */
export function BikeParts({ geometry }: { geometry: BikeGeometry }) {
  const { front, rear, drive, extras, fittings } = geometry;
  return (
    <>
      <FarFittings geometry={geometry} />
      <FarTandem geometry={geometry} />
      {drive && <FarCrank arms={armsOf(drive)} />}
      <QuickLever wheel={front} />
      <QuickLever wheel={rear} />
      <Wheel wheel={rear} reflectors={extras.has('reflectors')} />
      <Wheel wheel={front} reflectors={extras.has('reflectors')} />
      <FarBrake geometry={geometry} end="rear" />
      <FarBrake geometry={geometry} end="front" />
      {extras.has('mudguards') && <Mudguard guard={fittings.rearMudguard} />}
      {extras.has('mudguards') && <Mudguard guard={fittings.frontMudguard} />}
      <MiddleFittings geometry={geometry} />
      {drive && <Sprockets drive={drive} axle={rear.centre} />}
      {drive && <Chain drive={drive} />}
      <Stays geometry={geometry} />
      <Seat seat={geometry.seat} />
      <RearSeat geometry={geometry} />
      <MainTubes geometry={geometry} />
      {drive && <ChainOutside drive={drive} axle={rear.centre} />}
      <NearBrake geometry={geometry} end="rear" />
      <AxleEnd wheel={rear} />
      {drive && <RearDerailleur drive={drive} axle={rear.centre} />}
      <Fork geometry={geometry} />
      <NearBrake geometry={geometry} end="front" />
      <AxleEnd wheel={front} />
      <HeadTube geometry={geometry} />
      <Basket geometry={geometry} />
      <Cables geometry={geometry} />
      <Cockpit geometry={geometry} />
      <Bell geometry={geometry} />
      <NearFittings geometry={geometry} />
      <FrontDerailleur geometry={geometry} />
      {drive && <Chainrings geometry={geometry} drive={drive} />}
      <Chainguard geometry={geometry} />
      <NearTandem geometry={geometry} />
      {drive && <NearCrank arms={armsOf(drive)} />}
    </>
  );
}
