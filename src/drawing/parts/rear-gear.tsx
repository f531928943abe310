/** Sprockets, chain and derailleurs. */

import { useId } from 'react';
import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import type { DriveGeometry } from '../geometry/drive';
import { at, polyline } from '../geometry/path';
import { tube } from '../geometry/tube';
import { between, moved, type Point, shifted, towards } from '../geometry/vector';
import { Teeth } from './drive';
import { Part, Tubes } from './part';

export function Sprockets({ drive, axle }: { drive: DriveGeometry; axle: Point }) {
  const largest = drive.sprockets[0] ?? drive.sprocketUsed;
  const shown = drive.sprockets.filter(
    (_, index) => index > 0 && (drive.sprockets.length < 9 || index % 2 === 0),
  );
  return (
    <Part of="sprockets">
      <circle className={styles.outline} cx={axle.x} cy={axle.y} r={largest - 4} />
      {!drive.belt && <Teeth centre={axle} radius={largest} />}
      {shown.map((radius) => (
        <circle key={radius} className={styles.fine} cx={axle.x} cy={axle.y} r={radius - 2} />
      ))}
    </Part>
  );
}

export function Chain({ drive }: { drive: DriveGeometry }) {
  return (
    <Part of="chain">
      <path className={styles.fine} d={drive.loop} />
      <path
        className={drive.belt ? styles.belt : styles.chain}
        d={drive.loop}
        strokeDasharray={drive.belt ? undefined : '8.2 4.5'}
      />
    </Part>
  );
}

/** The chain again, from half-way to the ring: there it runs outside the frame, at the sprockets inside the stays. */
export function ChainOutside({ drive, axle }: { drive: DriveGeometry; axle: Point }) {
  const x = between(axle, drive.crankCentre, 0.5).x;
  const y = drive.crankCentre.y - drive.chainringUsed - 60;
  const width = drive.crankCentre.x + drive.chainringUsed + 60 - x;
  const height = drive.chainringUsed * 2 + 160;
  const clip = useId();
  return (
    <>
      <clipPath id={clip}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <Chain drive={drive} />
      </g>
    </>
  );
}

export function RearDerailleur({ drive, axle }: { drive: DriveGeometry; axle: Point }) {
  if (!drive.derailleur) return null;
  const { mount, guide, tension, pulley } = drive.derailleur;
  const along = towards(guide, tension);
  const cage = tube(
    'rear-derailleur',
    [moved(guide, along, -pulley * 0.4), moved(tension, along, pulley * 0.4)],
    20,
    17,
  );
  const knuckle = shifted(between(mount, guide, 0.62), -20, 8);
  return (
    <>
      <Tubes tubes={[tube('rear-derailleur', [shifted(axle, -2, 8), mount], 22, 17)]} />
      <Tubes tubes={[cage]} />
      <Part of="rear-derailleur">
        {[guide, tension].map((p) => (
          <g key={at(p)}>
            <circle className={styles.outline} cx={p.x} cy={p.y} r={pulley - 3} />
            <circle className={styles.solid} cx={p.x} cy={p.y} r={5} />
          </g>
        ))}
      </Part>
      <Tubes
        tubes={[
          tube('rear-derailleur', [mount, knuckle], 24, 28),
          tube('rear-derailleur', [knuckle, guide], 28, 20),
        ]}
      />
      <Part of="rear-derailleur">
        <circle className={styles.outline} cx={mount.x} cy={mount.y} r={11} />
        <circle className={styles.solid} cx={guide.x} cy={guide.y} r={5} />
      </Part>
    </>
  );
}

/** A cage over the rings, clamped to the seat tube. */
export function FrontDerailleur({ geometry }: { geometry: BikeGeometry }) {
  const { drive, seatUp } = geometry;
  if (!drive?.frontDerailleur) return null;
  const seatTube = geometry.usual.tubes.seat;
  const { x, y } = drive.frontDerailleur;
  const band = moved(drive.crankCentre, seatUp, drive.chainringUsed + 44);
  const cage = `M${at(shifted({ x, y }, -44, 12))}Q${at(shifted({ x, y }, -6, -8))} ${at(shifted({ x, y }, 38, 2))}L${at(shifted({ x, y }, 42, 22))}Q${at(shifted({ x, y }, 4, 18))} ${at(shifted({ x, y }, -34, 38))}Z`;
  return (
    <>
      <Tubes tubes={[tube('front-derailleur', [band, moved(band, seatUp, 22)], seatTube + 8)]} />
      <Part of="front-derailleur">
        <path className={styles.heavy} d={polyline([band, shifted({ x, y }, 0, 6)])} />
        <path className={styles.outline} d={cage} />
      </Part>
    </>
  );
}
