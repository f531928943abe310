/** Brakes: disc calipers on the far side, rim brake arms at fork and stays, reaction arms of hub brakes. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { type BrakePlace, brakePlace } from '../geometry/brake-places';
import { polyline } from '../geometry/path';
import { tube } from '../geometry/tube';
import { moved, towards } from '../geometry/vector';
import { Part, Tubes } from './part';

type End = 'front' | 'rear';

/** What lies on the far side: calipers and the arms that hold hub brakes still. */
export function FarBrake({ geometry, end }: { geometry: BikeGeometry; end: End }) {
  const brake = end === 'front' ? geometry.frontBrake : geometry.rearBrake;
  const place = brakePlace(geometry, end);
  const wheel = geometry[end];
  if (wheel.rotor !== undefined) return <Caliper place={place} centre={wheel.centre} />;
  if (brake === 'coaster' || brake === 'roller' || brake === 'drum') {
    const stay = end === 'front' ? geometry.crown : geometry.bottomBracket;
    const arm = moved(wheel.centre, towards(wheel.centre, stay), wheel.hub + 96);
    return <Tubes tubes={[tube(`${end}-brake`, [wheel.centre, arm], 30, 16)]} far />;
  }
  return null;
}

/** Arms and pads that show on the near side. */
export function NearBrake({ geometry, end }: { geometry: BikeGeometry; end: End }) {
  const brake = end === 'front' ? geometry.frontBrake : geometry.rearBrake;
  const place = brakePlace(geometry, end);
  const part = `${end}-brake` as const;
  if (brake === 'dual-pivot') return <DualPivot place={place} part={part} />;
  if (brake !== 'linear-pull' && brake !== 'cantilever') return null;
  const { along, out, pad } = place;
  const boss = moved(moved(pad, along, -26), out, 13);
  const tip = moved(boss, along, brake === 'linear-pull' ? 112 : 66);
  const lean = moved(tip, out, brake === 'linear-pull' ? 10 : 26);
  return (
    <>
      <Tubes tubes={[tube(part, [boss, lean], 18, 12)]} />
      <Pad place={place} part={part} />
      <Part of={part}>
        <circle className={styles.outline} cx={boss.x} cy={boss.y} r={10} />
        <circle className={styles.solid} cx={lean.x} cy={lean.y} r={6} />
      </Part>
    </>
  );
}

function Caliper({ place, centre }: { place: BrakePlace; centre: { x: number; y: number } }) {
  const { pad } = place;
  const outward = towards(centre, pad);
  const round = { x: -outward.y, y: outward.x };
  const body = tube(`${place.end}-brake`, [moved(pad, round, -34), moved(pad, round, 34)], 38, 32);
  return <Tubes tubes={[body]} far />;
}

/** Both arms hang from one bolt through crown or bridge and reach down to the rim. */
function DualPivot({ place, part }: { place: BrakePlace; part: 'front-brake' | 'rear-brake' }) {
  const { bridge, out, pad } = place;
  const bolt = moved(bridge, out, 22);
  const elbow = moved(bolt, out, 12);
  const foot = moved(pad, out, 18);
  return (
    <>
      <Tubes tubes={[tube(part, [bolt, elbow, moved(foot, out, 6), foot], 30, 15)]} />
      <Pad place={place} part={part} />
      <Part of={part}>
        <circle className={styles.outline} cx={bolt.x} cy={bolt.y} r={11} />
      </Part>
    </>
  );
}

/** Pads lie along the rim. */
function Pad({ place, part }: { place: BrakePlace; part: 'front-brake' | 'rear-brake' }) {
  const { pad, out } = place;
  const ends = [moved(pad, out, -8), moved(pad, out, 44)];
  return (
    <Part of={part}>
      <path className={styles.heavy} d={polyline(ends)} />
    </Part>
  );
}
