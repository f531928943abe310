/** The frame: main tubes, stays, head tube, and what only some frames have. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { polyline } from '../geometry/path';
import { tube } from '../geometry/tube';
import { between, moved, shifted, towards } from '../geometry/vector';
import { Part, Tubes } from './part';

export function MainTubes({ geometry }: { geometry: BikeGeometry }) {
  const { frame, assist, fittings } = geometry;
  return (
    <>
      <Tubes tubes={frame.main} />
      {assist !== 'none' && <Tubes tubes={[fittings.battery]} />}
      <Hinge geometry={geometry} />
    </>
  );
}

export function Stays({ geometry }: { geometry: BikeGeometry }) {
  const { frame, rear } = geometry;
  const { x, y } = rear.centre;
  return (
    <>
      <Shock geometry={geometry} />
      <Tubes tubes={frame.stays} />
      <Part of="stays">
        <circle className={styles.outline} cx={x} cy={y} r={19} />
      </Part>
    </>
  );
}

export function HeadTube({ geometry }: { geometry: BikeGeometry }) {
  return <Tubes tubes={[geometry.frame.headTube]} />;
}

/** Spring between link and front triangle: a body and a thinner shaft. */
function Shock({ geometry }: { geometry: BikeGeometry }) {
  const { shock } = geometry.frame;
  if (!shock) return null;
  const middle = between(shock.from, shock.to, 0.42);
  return (
    <>
      <Tubes
        tubes={[tube('stays', [shock.from, middle], 20), tube('stays', [middle, shock.to], 44)]}
      />
      <Part of="stays">
        {[shock.from, shock.to].map(({ x, y }) => (
          <circle key={x} className={styles.outline} cx={x} cy={y} r={13} />
        ))}
      </Part>
    </>
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
