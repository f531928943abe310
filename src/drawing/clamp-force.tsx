/** The same bolt dry and greased at the same torque: each drawn out as far as its clamping force takes it. */

import { useId } from 'react';
import styles from './clamp-force.module.css';
import { polyline } from './geometry/path';

/** One state of the bolt; forces as shares of the load it bears without lasting stretch. */
export interface ClampForceRow {
  readonly label: string;
  readonly low: number;
  readonly high: number;
}

export interface ClampForceProps {
  readonly rows: readonly ClampForceRow[];
  /** What stands at the line where lasting stretch begins. */
  readonly limitLabel: string;
  /** What the picture shows, for those who do not see it. */
  readonly title: string;
}

const width = 440;
const rowHeight = 74;
const top = 30;
const head = { left: 8, width: 26, height: 44 };
const shankHeight = 24;
const start = head.left + head.width;
const room = width - start - 12;

export function ClampForce({ rows, limitLabel, title }: ClampForceProps) {
  const titleId = useId();
  const reach = Math.max(1, ...rows.map(({ high }) => high)) * 1.04;
  const xOf = (share: number) => start + (share / reach) * room;
  const height = top + rows.length * rowHeight;
  return (
    <svg
      className={styles.force}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={titleId}
    >
      <title id={titleId}>{title}</title>
      {rows.map((row, index) => (
        <Bolt key={row.label} row={row} y={top + index * rowHeight} xOf={xOf} />
      ))}
      <line
        className={styles.limit}
        data-limit=""
        x1={xOf(1)}
        x2={xOf(1)}
        y1={top - 6}
        y2={height - 6}
      />
      <text className={styles.limitLabel} x={xOf(1)} y={18}>
        {limitLabel}
      </text>
    </svg>
  );
}

interface BoltProps {
  readonly row: ClampForceRow;
  readonly y: number;
  readonly xOf: (share: number) => number;
}

/** Solid as far as the least force surely takes it, open from there to the greatest. */
function Bolt({ row, y, xOf }: BoltProps) {
  const middle = y + 46;
  const [sure, most] = [xOf(row.low), xOf(row.high)];
  const upper = middle - shankHeight / 2;
  return (
    <g data-bolt={row.label}>
      <text className={styles.label} x={start + 4} y={y + 18}>
        {row.label}
      </text>
      <rect
        className={styles.head}
        x={head.left}
        y={middle - head.height / 2}
        width={head.width}
        height={head.height}
      />
      <rect
        className={styles.sure}
        data-sure=""
        x={start}
        y={upper}
        width={sure - start}
        height={shankHeight}
      />
      <rect
        className={styles.perhaps}
        data-perhaps=""
        x={sure}
        y={upper}
        width={most - sure}
        height={shankHeight}
      />
      <path className={styles.thread} d={threadOf(sure, most, upper)} />
    </g>
  );
}

/** Turns of the thread along the open part of the shank. */
function threadOf(from: number, to: number, upper: number): string {
  const turns = Math.max(1, Math.floor((to - from) / 8));
  return Array.from({ length: turns }, (_, index) => from + (index + 0.5) * ((to - from) / turns))
    .map((x) =>
      polyline([
        { x: x - 2, y: upper },
        { x: x + 2, y: upper + shankHeight },
      ]),
    )
    .join('');
}
