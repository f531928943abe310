/** The near leg of the fork, its crown and, when it springs, stanchion and arch. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { Part, Tubes } from './part';

export function Fork({ geometry }: { geometry: BikeGeometry }) {
  const { fork, front } = geometry;
  const { x, y } = front.centre;
  return (
    <>
      {fork.arch && <Tubes tubes={[fork.arch]} />}
      <Tubes tubes={fork.legs} />
      <Tubes tubes={[fork.crown]} />
      <Part of="fork">
        <circle className={styles.outline} cx={x} cy={y} r={fork.kind === 'telescopic' ? 20 : 17} />
      </Part>
    </>
  );
}
