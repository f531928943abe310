/** What a second rider adds: cranks in step, a chain on the far side, a saddle and a bar of their own. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { tube } from '../geometry/tube';
import { between, shifted } from '../geometry/vector';
import { FarCrank, NearCrank } from './drive';
import { Part, Tubes } from './part';
import { Seat } from './seat';

export function FarTandem({ geometry }: { geometry: BikeGeometry }) {
  const arms = geometry.drive?.inStep;
  if (!arms) return null;
  return (
    <>
      <FarCrank arms={arms} />
      <Part of="chain" far>
        <path className={styles.line} d={arms.loop} />
      </Part>
    </>
  );
}

export function RearSeat({ geometry }: { geometry: BikeGeometry }) {
  const { rearSeat, seat, seatTubeTop } = geometry;
  if (!rearSeat) return null;
  const held = between(seatTubeTop, seat.head, 0.3);
  const clamp = shifted(held, -150, -52);
  return (
    <>
      <Seat seat={rearSeat} />
      <Tubes
        tubes={[
          tube('stem', [held, clamp], 28),
          tube('bar', [clamp, shifted(clamp, -46, -16)], 24),
        ]}
      />
      <Part of="stem">
        <circle className={styles.outline} cx={clamp.x} cy={clamp.y} r={20} />
      </Part>
      <Tubes tubes={[tube('grips', [shifted(clamp, -28, -10), shifted(clamp, -88, -24)], 32)]} />
    </>
  );
}

export function NearTandem({ geometry }: { geometry: BikeGeometry }) {
  const arms = geometry.drive?.inStep;
  return arms ? <NearCrank arms={arms} /> : null;
}
