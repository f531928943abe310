/** Mudguards: a thin band round the tyre, with stays to the axle. */

import styles from '../drawing.module.css';
import type { Mudguard as MudguardGeometry } from '../geometry/fittings';
import { arc, arcOn, at, polyline } from '../geometry/path';
import { onCircle } from '../geometry/vector';
import { Part } from './part';

const thickness = 11;

export function Mudguard({ guard }: { guard: MudguardGeometry }) {
  const { wheel, radius, from, to, stays } = guard;
  const { centre } = wheel;
  const band = `${arc(centre, radius, from, to)}L${at(onCircle(centre, radius + thickness, to))}${arcOn(centre, radius + thickness, to, from)}Z`;
  const rods = stays.map((bearing) => polyline([centre, onCircle(centre, radius + 3, bearing)]));
  return (
    <Part of={`${wheel.end}-mudguard`}>
      <path className={styles.fine} d={rods.join('')} />
      <path className={styles.outline} d={band} />
    </Part>
  );
}
