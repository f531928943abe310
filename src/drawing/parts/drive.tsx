/** Chainrings, cranks and pedals. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import type { DriveGeometry } from '../geometry/drive';
import { at, circle, polyline } from '../geometry/path';
import { tube } from '../geometry/tube';
import { onCircle, type Point, point, shifted } from '../geometry/vector';
import { Part, Tubes } from './part';

interface Arms {
  readonly centre: Point;
  readonly right: Point;
  readonly left: Point;
}

/** The crank of the far side, behind everything. */
export function FarCrank({ arms }: { arms: Arms }) {
  return (
    <>
      <Tubes tubes={[tube('cranks', [arms.centre, arms.left], 26, 20)]} far />
      <Pedal of="left-pedal" centre={arms.left} far />
    </>
  );
}

export function NearCrank({ arms }: { arms: Arms }) {
  const { x, y } = arms.centre;
  return (
    <>
      <Part of="cranks">
        <circle className={styles.outline} cx={x} cy={y} r={22} />
      </Part>
      <Tubes tubes={[tube('cranks', [arms.centre, arms.right], 30, 21)]} />
      <Part of="cranks">
        <circle className={styles.paper} cx={x} cy={y} r={16} />
        <circle className={styles.line} cx={x} cy={y} r={10} />
      </Part>
      <Pedal of="right-pedal" centre={arms.right} />
    </>
  );
}

/** The cranks that the drive hangs on. */
export function armsOf(drive: DriveGeometry): Arms {
  return { centre: drive.crankCentre, right: drive.crankRight, left: drive.crankLeft };
}

function Pedal({
  of,
  centre,
  far,
}: {
  of: 'left-pedal' | 'right-pedal';
  centre: Point;
  far?: boolean;
}) {
  const { x, y } = centre;
  return (
    <Part of={of} far={far ?? false}>
      <rect className={styles.outline} x={x - 48} y={y - 11} width={96} height={22} rx={6} />
      <circle className={styles.solid} cx={x} cy={y} r={6} />
    </Part>
  );
}

/** Rings as toothed bands on a spider of four arms; the frame shows through. */
export function Chainrings({ geometry, drive }: { geometry: BikeGeometry; drive: DriveGeometry }) {
  const { x, y } = drive.crankCentre;
  const inner = drive.chainringUsed - 17;
  const arms = [20, 110, 200, 290].map((bearing) =>
    polyline([
      onCircle(drive.crankCentre, 18, bearing),
      onCircle(drive.crankCentre, inner + 3, bearing),
    ]),
  );
  return (
    <>
      {drive.motor && <Motor centre={drive.crankCentre} />}
      <Part of="bottom-bracket">
        <circle className={styles.outline} cx={x} cy={y} r={geometry.rear.radius < 220 ? 20 : 25} />
      </Part>
      <Part of="chainrings">
        <path
          className={styles.outline}
          fillRule="evenodd"
          d={`${circle(point(x, y), drive.chainringUsed - 4)}${circle(point(x, y), inner)}`}
        />
        {drive.chainrings.slice(1).map((radius) => (
          <circle key={radius} className={styles.fine} cx={x} cy={y} r={radius - 3} />
        ))}
        {!drive.belt && <Teeth centre={drive.crankCentre} radius={drive.chainringUsed} />}
        <path className={styles.heavy} d={arms.join('')} />
      </Part>
    </>
  );
}

/** One tooth to each half inch of the pitch circle. */
export function Teeth({ centre, radius }: { centre: Point; radius: number }) {
  const teeth = Math.round((2 * Math.PI * radius) / 12.7);
  const r = radius - 1;
  const pitch = (2 * Math.PI * r) / teeth;
  return (
    <circle
      className={styles.teeth}
      cx={centre.x}
      cy={centre.y}
      r={r}
      strokeDasharray={`${(pitch * 0.5).toFixed(2)} ${(pitch * 0.5).toFixed(2)}`}
    />
  );
}

function Motor({ centre }: { centre: Point }) {
  const p = (x: number, y: number) => at(shifted(centre, x, y));
  const d = `M${p(-62, -46)}Q${p(0, -92)} ${p(84, -78)}Q${p(128, -58)} ${p(112, 2)}Q${p(92, 66)} ${p(10, 72)}Q${p(-66, 60)} ${p(-62, -46)}Z`;
  return (
    <Part of="bottom-bracket">
      <path className={styles.outline} d={d} />
    </Part>
  );
}
