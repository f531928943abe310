/** What only some bikes carry; each drawn only when the description names it. */

import type { BikeGeometry } from '../bike-geometry';
import styles from '../drawing.module.css';
import { at, polyline } from '../geometry/path';
import { between, moved, type Point, point, shifted } from '../geometry/vector';
import { Part, Tubes } from './part';

/** Behind the wheels: stand and the far stabiliser. */
export function FarFittings({ geometry }: { geometry: BikeGeometry }) {
  const { extras, fittings } = geometry;
  if (!extras.has('stand')) return null;
  const { x, y } = fittings.standFoot;
  return (
    <>
      <Tubes tubes={[fittings.stand]} far />
      <Part of="stand" far>
        <rect className={styles.outline} x={x - 22} y={y - 7} width={44} height={13} rx={5} />
      </Part>
    </>
  );
}

/** Over the wheels, behind the frame. */
export function MiddleFittings({ geometry }: { geometry: BikeGeometry }) {
  const { extras, fittings, rear, drive } = geometry;
  return (
    <>
      {extras.has('rack') && <Tubes tubes={fittings.rack} />}
      {extras.has('spoke-guard') && (
        <Part of="rear-hub">
          <circle
            className={styles.fine}
            cx={rear.centre.x}
            cy={rear.centre.y}
            r={(drive?.sprockets[0] ?? 60) + 14}
          />
        </Part>
      )}
    </>
  );
}

/** In front of the frame. */
export function NearFittings({ geometry }: { geometry: BikeGeometry }) {
  const { extras } = geometry;
  return (
    <>
      <Lights geometry={geometry} />
      {extras.has('reflectors') && <RearReflector at={geometry.fittings.rearReflector} />}
      {extras.has('bottle-cage') && <BottleCage geometry={geometry} />}
      {extras.has('lock') && <RingLock geometry={geometry} />}
      {extras.has('stabilisers') && <Stabiliser geometry={geometry} />}
      {extras.has('child-seat-mount') && <SeatMount geometry={geometry} />}
    </>
  );
}

export function Bell({ geometry }: { geometry: BikeGeometry }) {
  const { bell } = geometry.fittings;
  if (!geometry.extras.has('bell')) return null;
  const p = (x: number, y: number) => at(shifted(bell, x, y));
  return (
    <Part of="bell">
      <path
        className={styles.outline}
        d={`M${p(-20, 6)}C${p(-20, -24)} ${p(20, -24)} ${p(20, 6)}Z`}
      />
      <path className={styles.line} d={`M${p(0, 6)}L${p(0, 14)}`} />
    </Part>
  );
}

export function Basket({ geometry }: { geometry: BikeGeometry }) {
  if (!geometry.extras.has('basket')) return null;
  const [backTop, frontTop, frontFoot, backFoot] = geometry.fittings.basket;
  if (!backTop || !frontTop || !frontFoot || !backFoot) return null;
  const shares = [0.2, 0.4, 0.6, 0.8];
  const upright = shares.map((s) =>
    polyline([between(backTop, frontTop, s), between(backFoot, frontFoot, s)]),
  );
  const level = [0.33, 0.66].map((s) =>
    polyline([between(backTop, backFoot, s), between(frontTop, frontFoot, s)]),
  );
  return (
    <Part of="basket">
      <path
        className={styles.outline}
        d={polyline([backTop, frontTop, frontFoot, backFoot], true)}
      />
      <path className={styles.fine} d={[...upright, ...level].join('')} />
    </Part>
  );
}

function Lights({ geometry }: { geometry: BikeGeometry }) {
  const { extras, fittings } = geometry;
  if (!extras.has('dynamo-lights') && !extras.has('battery-lights')) return null;
  const f = (x: number, y: number) => at(shifted(fittings.frontLight, x, y));
  const { x, y } = fittings.rearLight;
  return (
    <>
      <Part of="front-light">
        {extras.has('dynamo-lights') && (
          <path className={styles.line} d={`M${f(-34, 22)}L${f(0, 4)}`} />
        )}
        <path
          className={styles.outline}
          d={`M${f(36, -26)}L${f(36, 26)}C${f(-2, 30)} ${f(-26, 16)} ${f(-26, 0)}C${f(-26, -16)} ${f(-2, -30)} ${f(36, -26)}Z`}
        />
        <path className={styles.fine} d={`M${f(24, -24)}L${f(24, 24)}`} />
      </Part>
      <Part of="rear-light">
        <rect className={styles.outline} x={x - 20} y={y - 17} width={32} height={34} rx={9} />
        <path className={styles.fine} d={`M${x - 8} ${y - 16}V${y + 16}`} />
      </Part>
    </>
  );
}

function RearReflector({ at: { x, y } }: { at: Point }) {
  return (
    <Part of="reflectors">
      <rect className={styles.outline} x={x - 17} y={y - 16} width={14} height={32} rx={3} />
    </Part>
  );
}

function BottleCage({ geometry }: { geometry: BikeGeometry }) {
  const { foot, along, out } = geometry.fittings.cage;
  const p = (up: number, off: number) => moved(moved(foot, along, up), out, off);
  const wire = (lift: number) =>
    `M${at(p(0, 5))}L${at(p(0, 58))}Q${at(p(2, 78 - lift))} ${at(p(22, 78 - lift))}C${at(p(70, 76 - lift))} ${at(p(84, 16))} ${at(p(148, 5))}`;
  return (
    <Part of="bottle-cage">
      <path className={styles.outline} d={`${wire(0)}Z`} />
      <path className={styles.fine} d={wire(16)} />
      <path className={styles.line} d={`M${at(p(-4, 5))}L${at(p(156, 5))}`} />
    </Part>
  );
}

/** A ring lock sits on the seatstays, open round the tyre. */
function RingLock({ geometry }: { geometry: BikeGeometry }) {
  const { x, y } = geometry.fittings.lock;
  return (
    <Part of="lock">
      <rect className={styles.outline} x={x - 22} y={y - 46} width={34} height={92} rx={12} />
      <circle className={styles.solid} cx={x - 5} cy={y + 24} r={7} />
    </Part>
  );
}

function Stabiliser({ geometry }: { geometry: BikeGeometry }) {
  const { centre, radius } = geometry.rear;
  const small = Math.min(58, radius * 0.36);
  const hub = point(centre.x - 12, -small - 6);
  return (
    <Part of="stabilisers">
      <path className={styles.heavy} d={polyline([centre, shifted(hub, 0, -4)])} />
      <circle className={styles.outline} cx={hub.x} cy={hub.y} r={small} />
      <circle className={styles.fine} cx={hub.x} cy={hub.y} r={small - 14} />
      <circle className={styles.solid} cx={hub.x} cy={hub.y} r={8} />
    </Part>
  );
}

/** The block that a child seat's bow plugs into, on the seat tube. */
function SeatMount({ geometry }: { geometry: BikeGeometry }) {
  const { x, y } = moved(geometry.seatTubeTop, geometry.seatUp, -110);
  return (
    <Part of="seat-tube">
      <rect className={styles.outline} x={x - 34} y={y - 34} width={58} height={68} rx={10} />
    </Part>
  );
}
