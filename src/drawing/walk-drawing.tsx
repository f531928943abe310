/** The walk round the bike: the same drawing, receded, with the route from front to rear and a mark at each point. */

import { useId, useMemo } from 'react';
import type { Bike, Place } from '../engine/bike';
import { BikeParts } from './bike-drawing';
import { geometryOf } from './bike-geometry';
import styles from './drawing.module.css';
import { at } from './geometry/path';
import { type Point, shifted } from './geometry/vector';
import { classOfDrawing, type Tone } from './pen';
import { placeOnBike } from './places-on-bike';
import { type Mark, spreadMarks } from './spread-marks';

export const pointStates = ['todo', 'now', 'good', 'adjusted', 'wrong', 'stale'] as const;
export type PointState = (typeof pointStates)[number];

export interface WalkPoint {
  readonly id: string;
  readonly place: Place;
  readonly number: number;
  readonly state: PointState;
}

export interface WalkDrawingProps {
  readonly bike: Bike;
  /** In the order of the walk. */
  readonly points: readonly WalkPoint[];
  readonly tone?: Tone;
  /** What the picture shows, for those who do not see it. */
  readonly title: string;
}

export function WalkDrawing({ bike, points, tone = 'screen', title }: WalkDrawingProps) {
  const geometry = useMemo(() => geometryOf(bike), [bike]);
  const titleId = useId();
  const { x, y, width, height } = geometry.box;
  const small = width / 66;
  const marks = spreadMarks(
    points.map(({ place, state }) => ({
      ...placeOnBike(geometry, place),
      r: state === 'now' ? small * 2 : small * 1.12,
    })),
    geometry.box,
  );
  const numbered = points.map((walkPoint, index) => ({ ...walkPoint, mark: marks[index] }));
  const inFront = [...numbered].sort(
    (a, b) => Number(a.state === 'now') - Number(b.state === 'now'),
  );
  return (
    <svg
      className={classOfDrawing(geometry, tone)}
      viewBox={`${Math.round(x)} ${Math.round(y)} ${Math.round(width)} ${Math.round(height)}`}
      role="img"
      aria-labelledby={titleId}
    >
      <title id={titleId}>{title}</title>
      <g className={styles.receded}>
        <BikeParts geometry={geometry} />
      </g>
      <path className={styles.route} d={route(marks)} strokeDasharray="2 15" />
      {inFront.map(
        ({ id, number, state, mark }) =>
          mark && (
            <g key={id} data-point={id} data-state={state}>
              <PointMark state={state} mark={mark} size={small} number={number} />
            </g>
          ),
      )}
    </svg>
  );
}

/** A smooth line through every point (a taut Catmull–Rom spline). */
function route(points: readonly Point[]): string {
  const [first, ...rest] = points;
  if (!first) return '';
  const curves = rest.map((to, index) => {
    const from = points[index] ?? first;
    const before = points[index - 1] ?? from;
    const after = points[index + 2] ?? to;
    const leave = shifted(from, (to.x - before.x) / 9, (to.y - before.y) / 9);
    const arrive = shifted(to, (from.x - after.x) / 9, (from.y - after.y) / 9);
    return `C${at(leave)} ${at(arrive)} ${at(to)}`;
  });
  return `M${at(first)}${curves.join('')}`;
}

interface PointMarkProps {
  readonly state: PointState;
  readonly mark: Mark;
  readonly size: number;
  readonly number: number;
}

/** To do: open ring. Now: large, filled, numbered. Good: dot. Adjusted: diamond. Wrong: cross. Stale: ring struck through. */
function PointMark({ state, mark: { x, y }, size: r, number }: PointMarkProps) {
  switch (state) {
    case 'todo':
      return <circle className={styles.pointToDo} cx={x} cy={y} r={r * 0.62} />;
    case 'now':
      return (
        <>
          <circle className={styles.pointNow} cx={x} cy={y} r={r * 1.8} />
          <text className={styles.pointNumber} x={x} y={y + r * 0.68} fontSize={r * 1.9}>
            {number}
          </text>
        </>
      );
    case 'good':
      return <circle className={styles.pointDone} cx={x} cy={y} r={r * 0.74} />;
    case 'adjusted':
      return (
        <path
          className={styles.pointDone}
          d={`M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}Z`}
        />
      );
    case 'wrong': {
      const arm = r * 0.66;
      return (
        <>
          <circle className={styles.pointHalo} cx={x} cy={y} r={r} />
          <path
            className={styles.pointStroke}
            d={`M${x - arm} ${y - arm}L${x + arm} ${y + arm}M${x + arm} ${y - arm}L${x - arm} ${y + arm}`}
          />
        </>
      );
    }
    case 'stale': {
      const arm = r * 0.95;
      return (
        <>
          <circle className={styles.pointToDo} cx={x} cy={y} r={r * 0.7} />
          <path
            className={styles.pointStroke}
            d={`M${x - arm} ${y + arm * 0.6}L${x + arm * 0.6} ${y - arm}M${x - arm * 0.6} ${y + arm}L${x + arm} ${y - arm * 0.6}`}
          />
        </>
      );
    }
  }
}
