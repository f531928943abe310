/** A wheel: tyre, rim, spokes, hub and what turns with it on the far side. */

import styles from '../drawing.module.css';
import { at, polyline } from '../geometry/path';
import { moved, onCircle, point, upwards } from '../geometry/vector';
import type { WheelGeometry } from '../geometry/wheels';
import { Part } from './part';

export function Wheel({ wheel, reflectors }: { wheel: WheelGeometry; reflectors: boolean }) {
  const { centre, radius, rimOuter, rimInner, end } = wheel;
  const { x: cx, y: cy } = centre;
  return (
    <>
      {wheel.rotor !== undefined && <Rotor wheel={wheel} radius={wheel.rotor} />}
      <Part of={`${end}-rim`}>
        <path className={styles.spokes} d={spokes(wheel)} />
        <circle className={styles.line} cx={cx} cy={cy} r={rimOuter - 2} />
        <circle className={styles.fine} cx={cx} cy={cy} r={rimInner} />
        <path className={styles.line} d={valve(wheel)} />
      </Part>
      <Part of={`${end}-tyre`}>
        {wheel.knobs && (
          <circle
            className={styles.knobs}
            cx={cx}
            cy={cy}
            r={radius - 3.5}
            strokeDasharray="13 9"
          />
        )}
        <circle
          className={wheel.knobs ? styles.line : styles.heavy}
          cx={cx}
          cy={cy}
          r={wheel.knobs ? radius - 8 : radius - 4.5}
        />
      </Part>
      {reflectors && <SpokeReflector wheel={wheel} />}
      <Hub wheel={wheel} />
    </>
  );
}

/** Each pair of spokes leaves its flange to opposite sides and crosses its neighbours. */
function spokes({ centre, hub, rimInner, spokes: count }: WheelGeometry): string {
  const flange = Math.max(hub - 3, 18);
  const lean = hub > 60 ? 34 : 62;
  return Array.from({ length: count }, (_, index) => {
    const bearing = (index * 360) / count;
    const from = onCircle(centre, flange, bearing + (index % 2 === 0 ? lean : -lean));
    return `M${at(from)}L${at(onCircle(centre, rimInner, bearing))}`;
  }).join('');
}

function valve({ centre, rimInner }: WheelGeometry): string {
  return polyline([onCircle(centre, rimInner, 186), onCircle(centre, rimInner - 26, 186)]);
}

function Rotor({ wheel, radius }: { wheel: WheelGeometry; radius: number }) {
  const { x: cx, y: cy } = wheel.centre;
  const arms = [0, 60, 120, 180, 240, 300].map((bearing) =>
    polyline([
      onCircle(wheel.centre, 24, bearing),
      onCircle(wheel.centre, radius - 17, bearing - 24),
    ]),
  );
  return (
    <Part of={`${wheel.end}-brake`} far>
      <circle className={styles.fine} cx={cx} cy={cy} r={radius} />
      <circle className={styles.fine} cx={cx} cy={cy} r={radius - 17} />
      <path className={styles.fine} d={arms.join('')} />
    </Part>
  );
}

function SpokeReflector({ wheel }: { wheel: WheelGeometry }) {
  const middle = onCircle(wheel.centre, wheel.rimInner * 0.72, 52);
  const along = upwards(-52);
  const ends = [moved(middle, along, -34), moved(middle, along, 34)];
  return (
    <Part of="reflectors">
      <path className={styles.heavy} d={polyline(ends)} />
    </Part>
  );
}

function Hub({ wheel }: { wheel: WheelGeometry }) {
  const { x: cx, y: cy } = wheel.centre;
  return (
    <Part of={`${wheel.end}-hub`}>
      <circle className={styles.outline} cx={cx} cy={cy} r={wheel.hub} />
      {wheel.hub > 34 && <circle className={styles.fine} cx={cx} cy={cy} r={wheel.hub - 9} />}
    </Part>
  );
}

/** The end of the axle as it shows outside the dropout: nut, axle head, or the skewer's own nut. */
export function AxleEnd({ wheel }: { wheel: WheelGeometry }) {
  const { centre, axle } = wheel;
  const nut = [0, 60, 120, 180, 240, 300].map((bearing) => onCircle(centre, 14, bearing));
  return (
    <Part of={`${wheel.end}-hub`}>
      {axle === 'nutted' ? (
        <path className={styles.outline} d={polyline(nut, true)} />
      ) : (
        <circle
          className={styles.outline}
          cx={centre.x}
          cy={centre.y}
          r={axle === 'thru-axle' ? 13 : 11}
        />
      )}
      <circle className={styles.solid} cx={centre.x} cy={centre.y} r={axle === 'nutted' ? 6 : 4} />
    </Part>
  );
}

/** The lever of a quick release lies on the far side, along the fork leg or stay. */
export function QuickLever({ wheel }: { wheel: WheelGeometry }) {
  if (wheel.axle !== 'quick-release') return null;
  const bearing = wheel.end === 'front' ? -28 : 52;
  const tip = onCircle(wheel.centre, 58, bearing);
  const bend = onCircle(wheel.centre, 30, bearing - 10);
  const d = `M${at(wheel.centre)}Q${at(point(bend.x, bend.y))} ${at(tip)}`;
  return (
    <Part of={`${wheel.end}-hub`} far>
      <path className={styles.heavy} d={d} />
    </Part>
  );
}
