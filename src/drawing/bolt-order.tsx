/** The bolts of one joint as they lie, each with its turn in the tightening order, and the way from one to the next. */

import { useId } from 'react';
import type { Layout } from '../engine/torque';
import { type BoltPicture, boltPicture, boltRadius } from './bolt-places';
import styles from './drawing.module.css';
import { arc, at, polyline } from './geometry/path';
import {
  distance,
  distanceToLine,
  moved,
  onCircle,
  type Point,
  quarterTurn,
  towards,
} from './geometry/vector';
import type { Tone } from './pen';

export interface BoltOrderProps {
  readonly layout: Layout;
  /** Bolt numbers from 1 in the order in which they are brought up. */
  readonly order: readonly number[];
  /** Which round this is, from 1: shown as so many strokes. */
  readonly pass: number;
  /** Which way the thread tightens: clockwise for a right-hand thread. */
  readonly hand?: 'right' | 'left';
  readonly tone?: Tone;
  /** What the picture shows, for those who do not see it. */
  readonly title: string;
}

const tallyHeight = 30;
/** A joint of few bolts is drawn no larger than one of four. */
const leastSide = 164;

export function BoltOrder(props: BoltOrderProps) {
  const { layout, order, pass, hand = 'right', tone = 'screen', title } = props;
  const picture = boltPicture(layout);
  const titleId = useId();
  const single = layout.bolts === 1;
  const wide = Math.max(picture.width, leastSide) + 4;
  const high = Math.max(picture.height, leastSide) + (single ? 4 : tallyHeight);
  const left = (picture.width - wide) / 2;
  const top = (picture.height + (single ? 0 : tallyHeight - 4) - high) / 2;
  return (
    <svg
      className={tone === 'print' ? `${styles.joint} ${styles.print}` : styles.joint}
      viewBox={[left, top, wide, high].map(Math.round).join(' ')}
      role="img"
      aria-labelledby={titleId}
    >
      <title id={titleId}>{title}</title>
      <Frame picture={picture} />
      {single ? (
        <Turn centre={picture.bolts[0]} hand={hand} />
      ) : (
        <Way picture={picture} order={order} />
      )}
      {picture.bolts.map((bolt, index) => (
        <g key={at(bolt)} data-bolt={index + 1}>
          <circle className={styles.bolt} cx={bolt.x} cy={bolt.y} r={boltRadius} />
          {single ? (
            <Socket centre={bolt} />
          ) : (
            <text className={styles.boltNumber} x={bolt.x} y={bolt.y + 8}>
              {order.indexOf(index + 1) + 1}
            </text>
          )}
        </g>
      ))}
      {!single &&
        hand === 'left' &&
        picture.bolts.map((bolt) => <LeftHand key={at(bolt)} bolt={bolt} />)}
      {!single && <Tally picture={picture} pass={pass} />}
    </svg>
  );
}

function Frame({ picture: { width, height, round } }: { picture: BoltPicture }) {
  const corner = round ? Math.min(width, height) / 2 : 16;
  return <rect className={styles.frame} x={0} y={0} width={width} height={height} rx={corner} />;
}

/** Dotted from the rim of one bolt to the rim of the next, in order; bowed round a bolt that lies between. */
function Way({ picture, order }: { picture: BoltPicture; order: readonly number[] }) {
  const stops = order.flatMap((bolt) => picture.bolts[bolt - 1] ?? []);
  const legs = stops.slice(1).map((to, index) => legBetween(stops[index] ?? to, to, picture.bolts));
  return <path className={styles.way} d={legs.join('')} strokeDasharray="0.1 8" data-way="" />;
}

function legBetween(from: Point, to: Point, bolts: readonly Point[]): string {
  const along = towards(from, to);
  const inTheWay = bolts.some((bolt) => {
    const ahead = (bolt.x - from.x) * along.x + (bolt.y - from.y) * along.y;
    const between = ahead > boltRadius && ahead < distance(from, to) - boltRadius;
    return between && distanceToLine(bolt, from, to) < boltRadius;
  });
  if (!inTheWay) {
    const start = moved(from, along, boltRadius + 7);
    return polyline([start, moved(to, along, -boltRadius - 7)]);
  }
  const aside = quarterTurn(along);
  const lift = boltRadius + 8;
  const [start, end] = [moved(from, aside, lift), moved(to, aside, lift)];
  const bend = moved({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, aside, lift + 16);
  return `M${at(start)}Q${at(bend)} ${at(end)}`;
}

/** The hexagon in the head of a single bolt. */
function Socket({ centre }: { centre: Point }) {
  const corners = [0, 60, 120, 180, 240, 300].map((bearing) => onCircle(centre, 11, bearing));
  return <path className={styles.socket} d={polyline(corners, true)} />;
}

/** One bolt: an arrow the way it tightens, clockwise for a right-hand thread. */
function Turn({ centre, hand }: { centre: Point | undefined; hand: 'right' | 'left' }) {
  if (!centre) return null;
  const clockwise = hand === 'right';
  const radius = boltRadius + 20;
  const tipBearing = clockwise ? 130 : -130;
  const tip = onCircle(centre, radius, tipBearing);
  return (
    <g data-turn={clockwise ? 'clockwise' : 'anticlockwise'}>
      <path className={styles.way} d={arc(centre, radius, -126, 126)} />
      <path className={styles.way} d={arrowHead(centre, radius, tipBearing, clockwise, tip)} />
    </g>
  );
}

function arrowHead(
  centre: Point,
  radius: number,
  bearing: number,
  clockwise: boolean,
  tip: Point,
): string {
  const back = bearing + (clockwise ? -18 : 18);
  return polyline([onCircle(centre, radius + 10, back), tip, onCircle(centre, radius - 10, back)]);
}

/** A left-hand thread among several bolts shows as a short arrow over each. */
function LeftHand({ bolt }: { bolt: Point }) {
  const radius = boltRadius + 8;
  const tip = onCircle(bolt, radius, -58);
  const head = [onCircle(bolt, radius + 6, -44), tip, onCircle(bolt, radius - 6, -44)];
  return (
    <g data-turn="anticlockwise">
      <path className={styles.way} d={`${arc(bolt, radius, -56, 50)}${polyline(head)}`} />
    </g>
  );
}

/** So many strokes, so many rounds. */
function Tally({ picture: { width, height }, pass }: { picture: BoltPicture; pass: number }) {
  const start = width / 2 - (pass - 1) * 5;
  return (
    <g data-pass={pass}>
      {Array.from({ length: pass }, (_, index) => start + index * 10).map((x) => (
        <line key={x} className={styles.tally} x1={x} x2={x} y1={height + 10} y2={height + 24} />
      ))}
    </g>
  );
}
