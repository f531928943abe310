/** The frame: main tubes, stays, head tube, and what only some frames have. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { polyline } from '../geometry/path';
import { tube } from '../geometry/tube';
import { between, moved, type Point, shifted, towards } from '../geometry/vector';
import { Part, Tubes } from './part';

export function MainTubes({ geometry }: { geometry: BikeGeometry }) {
  const { frame, assist, fittings } = geometry;
  return (
    <>
      <Tubes tubes={frame.main} />
      {assist !== 'none' && <Tubes tubes={[fittings.battery]} />}
      <Shock geometry={geometry} />
      <Hinge geometry={geometry} />
      {geometry.kind === 'balance' && <Joint at={geometry.bottomBracket} />}
    </>
  );
}

/** Chainstay and seatstay, whose ends the main tubes cover. */
export function Stays({ geometry }: { geometry: BikeGeometry }) {
  const { x, y } = geometry.rear.centre;
  return (
    <>
      <Tubes tubes={geometry.frame.stays} />
      <Part of="stays">
        <circle className={styles.outline} cx={x} cy={y} r={19} />
      </Part>
    </>
  );
}

export function HeadTube({ geometry }: { geometry: BikeGeometry }) {
  return <Tubes tubes={[geometry.frame.headTube]} />;
}

/** Spring between link and top tube: a thin shaft and a body. */
function Shock({ geometry }: { geometry: BikeGeometry }) {
  const { shock } = geometry.frame;
  if (!shock) return null;
  const { link, pivot, from, to } = shock;
  const middle = between(from, to, 0.4);
  const [back = pivot] = link.line;
  return (
    <>
      <Tubes tubes={[tube('stays', [from, middle], 18), tube('stays', [middle, to], 40), link]} />
      <Part of="stays">
        {[back, pivot, from, to].map(({ x, y }) => (
          <circle key={x} className={styles.outline} cx={x} cy={y} r={14} />
        ))}
      </Part>
    </>
  );
}

/** Where tubes meet without a bottom bracket. */
function Joint({ at: { x, y } }: { at: Point }) {
  return (
    <Part of="seat-tube">
      <circle className={styles.outline} cx={x} cy={y} r={19} />
    </Part>
  );
}

function Hinge({ geometry }: { geometry: BikeGeometry }) {
  const { hinge, topTube } = geometry.frame;
  const [from, to] = topTube.line;
  if (!hinge || !from || !to) return null;
  const along = towards(from, to);
  const across = { x: -along.y, y: along.x };
  const half = topTube.width / 2 + 5;
  const cut = [-7, 7].map((offset) => {
    const middle = moved(hinge, along, offset);
    return polyline([moved(middle, across, -half), moved(middle, across, half)]);
  });
  const lever = polyline([shifted(hinge, -8, -10), moved(shifted(hinge, -8, -10), along, 84)]);
  return (
    <Part of="top-tube">
      <path className={styles.line} d={cut.join('')} />
      <path className={styles.heavy} d={lever} />
    </Part>
  );
}
