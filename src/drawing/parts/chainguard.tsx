/** The guard over chain and ring. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { chainguardOutline } from '../geometry/chainguard';
import { Part } from './part';

export function Chainguard({ geometry }: { geometry: BikeGeometry }) {
  const { drive, extras, rear } = geometry;
  if (!drive || !extras.has('chainguard')) return null;
  return (
    <Part of="chainguard">
      <path className={styles.outline} d={chainguardOutline(drive, rear.centre)} />
    </Part>
  );
}
