/** Moves marks that would cover each other apart, each no further than it must; the same input gives the same picture. */

import { type Point, point } from './geometry/vector';

export interface Mark extends Point {
  readonly r: number;
}

export interface Bounds {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const rounds = 160;

export function spreadMarks(marks: readonly Mark[], bounds: Bounds): readonly Mark[] {
  let spread = marks;
  for (let round = 0; round < rounds; round += 1) {
    const next = spread.map((mark, index) => keptInside(pushed(mark, index, spread), bounds));
    if (next.every((mark, index) => mark.x === spread[index]?.x && mark.y === spread[index]?.y))
      break;
    spread = next;
  }
  return spread;
}

/** Each of two that overlap gives way by half; two on one spot part in a direction of their own. */
function pushed(mark: Mark, index: number, all: readonly Mark[]): Mark {
  let { x, y } = mark;
  for (const [other, neighbour] of all.entries()) {
    if (other === index) continue;
    const away = apart(mark, neighbour, index, other);
    const gap = Math.hypot(mark.x - neighbour.x, mark.y - neighbour.y);
    const overlap = mark.r + neighbour.r - gap;
    if (overlap <= 0.01) continue;
    x += (away.x * overlap) / 2;
    y += (away.y * overlap) / 2;
  }
  return { x, y, r: mark.r };
}

function apart(a: Point, b: Point, index: number, other: number): Point {
  const gap = Math.hypot(a.x - b.x, a.y - b.y);
  if (gap > 0.01) return point((a.x - b.x) / gap, (a.y - b.y) / gap);
  const angle = (Math.min(index, other) * 7 + Math.max(index, other)) * 1.1;
  const sense = index < other ? -1 : 1;
  return point(Math.cos(angle) * sense, Math.sin(angle) * sense);
}

function keptInside(mark: Mark, { x, y, width, height }: Bounds): Mark {
  return {
    x: Math.min(Math.max(mark.x, x + mark.r), x + width - mark.r),
    y: Math.min(Math.max(mark.y, y + mark.r), y + height - mark.r),
    r: mark.r,
  };
}
