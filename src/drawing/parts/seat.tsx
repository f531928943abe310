/** Saddle, rails, seat post and its clamp. */

import styles from '../drawing.module.css';
import { at, polyline } from '../geometry/path';
import type { SeatGeometry } from '../geometry/seat';
import { moved, shifted, towards } from '../geometry/vector';
import { Part, Tubes } from './part';

/** Side views round the rail clamp, forward and down positive, mm: pairs of numbers after each path letter. */
const outlines: Readonly<Record<SeatGeometry['saddle'], string>> = {
  slim: 'M-124 -38 C-96 -50 -56 -42 -10 -39 C50 -37 104 -40 146 -34 Q158 -30 153 -21 C120 -18 84 -22 52 -15 C16 -6 -20 2 -62 0 Q-112 -4 -124 -38 Z',
  wide: 'M-136 -44 C-112 -62 -74 -52 -26 -44 C30 -38 84 -42 122 -36 Q136 -30 130 -18 C100 -12 72 -16 44 -6 C16 8 -30 18 -84 14 Q-136 4 -136 -44 Z',
  small:
    'M-108 -44 C-88 -58 -52 -46 -14 -41 C36 -38 90 -42 124 -36 Q138 -30 132 -20 C102 -14 74 -18 46 -10 C12 0 -20 4 -56 2 Q-104 -4 -108 -44 Z',
};

export function Seat({ seat }: { seat: SeatGeometry }) {
  const { head, scale } = seat;
  const p = (x: number, y: number) => shifted(head, x * scale, y * scale);
  const wide = seat.saddle === 'wide';
  return (
    <>
      <Tubes tubes={seat.post} />
      <SeatClamp seat={seat} />
      <Part of="saddle">
        {wide && <path className={styles.line} d={coil(p)} />}
        <path
          className={styles.line}
          d={`M${at(p(-96, wide ? 42 : -6))}C${at(p(-70, wide ? 42 : 8))} ${at(p(-52, 2))} ${at(p(-34, 2))}L${at(p(50, 2))}Q${at(p(78, 0))} ${at(p(104, -22))}`}
        />
        <path className={styles.outline} d={scaled(outlines[seat.saddle], p)} />
      </Part>
      <Part of="seat-post">
        <path
          className={styles.outline}
          d={polyline([p(-24, -9), p(24, -9), p(20, 13), p(-20, 13)], true)}
        />
        <circle className={styles.solid} cx={head.x} cy={head.y + 2 * scale} r={5} />
      </Part>
    </>
  );
}

function SeatClamp({ seat }: { seat: SeatGeometry }) {
  const [low, high] = seat.clamp.line;
  if (!low || !high) return null;
  const back = towards(high, shifted(high, -1, 0.25));
  const root = moved(low, back, seat.clamp.width / 2);
  return (
    <>
      <Tubes tubes={[seat.clamp]} />
      <Part of="seat-clamp">
        {seat.quickLever ? (
          <path className={styles.heavy} d={polyline([root, moved(root, back, 44)])} />
        ) : (
          <circle className={styles.outline} cx={root.x} cy={root.y - 5} r={8} />
        )}
      </Part>
    </>
  );
}

type Place = (x: number, y: number) => { readonly x: number; readonly y: number };

function scaled(outline: string, place: Place): string {
  return outline.replace(/(-?\d+) (-?\d+)/g, (_, x, y) => at(place(Number(x), Number(y))));
}

/** A coil under the tail, each turn seen as a short slanted line. */
function coil(place: Place): string {
  return [14, 22, 30, 38].map((y) => polyline([place(-118, y - 3), place(-82, y + 3)])).join('');
}
