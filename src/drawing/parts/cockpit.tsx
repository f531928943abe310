/** Headset, stem, bar, grip, lever, and the hoses or cables that leave them. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { at } from '../geometry/path';
import { tube } from '../geometry/tube';
import { between, moved, type Point, shifted } from '../geometry/vector';
import { Part, Tubes } from './part';

export function Cockpit({ geometry }: { geometry: BikeGeometry }) {
  const { cockpit, bar } = geometry;
  const { clamp, cap } = cockpit;
  return (
    <>
      <Tubes tubes={cockpit.headset} />
      {bar === 'drop' && <FarLever geometry={geometry} />}
      <Tubes tubes={cockpit.stem} />
      <Part of="stem">
        <circle className={styles.solid} cx={cap.x} cy={cap.y} r={6} />
      </Part>
      {bar !== 'drop' && <FarLever geometry={geometry} />}
      <Tubes tubes={cockpit.bar} />
      <Part of="stem">
        <circle className={styles.outline} cx={clamp.x} cy={clamp.y} r={20} />
      </Part>
      <Part of="bar">
        <circle className={styles.solid} cx={clamp.x} cy={clamp.y} r={7} />
      </Part>
      {geometry.kind !== 'balance' && bar !== 'drop' && <Tubes tubes={[cockpit.lever]} />}
      <Tubes tubes={[cockpit.grip]} />
      {bar === 'drop' && <Hood geometry={geometry} />}
    </>
  );
}

/** The left lever shows as a sliver behind the right one. */
function FarLever({ geometry }: { geometry: BikeGeometry }) {
  if (geometry.kind === 'balance') return null;
  const { lever } = geometry.cockpit;
  const line = lever.line.map((p) => shifted(p, 13, -7));
  return <Tubes tubes={[tube('left-lever', line, lever.width - 3, lever.endWidth - 2)]} far />;
}

/** Hood and lever of a drop bar. */
function Hood({ geometry }: { geometry: BikeGeometry }) {
  const { clamp, lever } = geometry.cockpit;
  const p = (x: number, y: number) => at(shifted(clamp, x, y));
  const hood = `M${p(58, -19)}C${p(84, -22)} ${p(106, -22)} ${p(124, -34)}C${p(136, -43)} ${p(150, -46)} ${p(156, -37)}C${p(161, -26)} ${p(156, -6)} ${p(145, 5)}C${p(132, 13)} ${p(112, 14)} ${p(98, 13)}C${p(90, 4)} ${p(76, -8)} ${p(58, -19)}Z`;
  return (
    <>
      <Tubes tubes={[lever]} />
      <Part of="right-lever">
        <path className={styles.outline} d={hood} />
      </Part>
    </>
  );
}

/** Front brake line and rear lines: loops that let the bar turn. */
export function Cables({ geometry }: { geometry: BikeGeometry }) {
  const { cockpit, crown, frame, frontBrake, rearBrake, steererForward: ahead } = geometry;
  if (geometry.kind === 'balance') return null;
  const start = cockpit.leverBase;
  const toFrame = between(
    frame.downTube.line[0] ?? crown,
    frame.downTube.line.at(-1) ?? crown,
    0.08,
  );
  const reach = geometry.bar === 'drop' ? 64 : 120;
  const front = moved(crown, ahead, geometry.fork.kind === 'telescopic' ? 30 : 16);
  const handFront = frontBrake !== 'none' && frontBrake !== 'coaster';
  const handRear =
    (rearBrake !== 'none' && rearBrake !== 'coaster') || geometry.gears !== 'single-speed';
  return (
    <Part of="cables">
      {handFront && <path className={styles.fine} d={loop(start, front, reach)} />}
      {handRear && <path className={styles.fine} d={loop(start, toFrame, reach * 0.8)} />}
    </Part>
  );
}

function loop(from: Point, to: Point, reach: number): string {
  const first = shifted(from, reach, 10);
  const second = shifted(to, reach * 0.7, -60);
  return `M${at(from)}C${at(first)} ${at(second)} ${at(to)}`;
}
