/** Headset, stem, bar, grips and levers, seen from the right. */

import type { Bike } from '../../engine/bike';
import type { Skeleton } from './skeleton';
import { type Tube, tube } from './tube';
import { moved, type Point, shifted, towards, upwards } from './vector';

export interface CockpitGeometry {
  readonly headset: readonly Tube[];
  readonly stem: readonly Tube[];
  /** The screw on top: top cap or wedge bolt. */
  readonly cap: Point;
  /** Centre of the bar where the stem holds it. */
  readonly clamp: Point;
  readonly bar: readonly Tube[];
  readonly grip: Tube;
  readonly lever: Tube;
  /** Where hose or cable leaves the lever. */
  readonly leverBase: Point;
  readonly top: number;
}

interface BarShape {
  readonly bar: readonly (readonly [x: number, y: number])[];
  readonly grip: readonly (readonly [x: number, y: number])[];
  readonly lever: readonly (readonly [x: number, y: number])[];
  readonly width: number;
}

/** Side views from the clamp, forward and down positive, mm (common practice, no source). */
const shapes: Readonly<Record<Bike['steering']['bar'] | 'bmx', BarShape>> = {
  flat: {
    bar: [
      [0, 0],
      [-30, -6],
      [-52, -10],
    ],
    grip: [
      [-26, -5],
      [-84, -15],
    ],
    lever: [
      [-24, 6],
      [18, 22],
      [34, 58],
    ],
    width: 24,
  },
  riser: {
    bar: [
      [0, 0],
      [2, -40],
      [-44, -40],
    ],
    grip: [
      [-28, -37],
      [-88, -45],
    ],
    lever: [
      [-26, -26],
      [20, -10],
      [36, 28],
    ],
    width: 24,
  },
  swept: {
    bar: [
      [0, 0],
      [44, -78],
      [-30, -84],
      [-112, -62],
    ],
    grip: [
      [-92, -67],
      [-206, -40],
    ],
    lever: [
      [-86, -46],
      [-130, -22],
      [-186, -10],
    ],
    width: 24,
  },
  drop: {
    bar: [
      [0, 0],
      [46, -6],
      [86, -2],
    ],
    grip: [
      [70, -4],
      [134, -4],
      [122, 134],
      [60, 128],
      [-28, 128],
    ],
    lever: [
      [138, -6],
      [152, 44],
      [118, 96],
    ],
    width: 30,
  },
  bmx: {
    bar: [
      [0, 0],
      [-2, -120],
      [-8, -196],
      [-40, -206],
    ],
    grip: [
      [-26, -203],
      [-78, -212],
    ],
    lever: [
      [-24, -190],
      [18, -176],
      [32, -140],
    ],
    width: 22,
  },
};

export function cockpitOf(bike: Bike, bones: Skeleton): CockpitGeometry {
  const { headTop, headBottom, steererUp: up, usual } = bones;
  const small = Math.min(1, 0.45 + (0.55 * bones.front.radius) / 330);
  const wide = usual.tubes.head;
  const along = (from: Point, height: number) => moved(from, up, height);
  const headset = [
    tube('headset', [along(headBottom, -11), headBottom], wide + 2, wide + 8),
    tube('headset', [headTop, along(headTop, 12)], wide + 6, wide - 4),
  ];
  const rise = 90 - usual.headAngle + usual.stemRise;
  const { stem, cap, clamp } =
    bike.steering.stem === 'quill'
      ? quill(along(headTop, 12), up, rise, usual.stem, usual.spacers)
      : threadless(along(headTop, 12), up, rise, usual.stem, usual.spacers * small, small);
  const shape = shapes[bike.kind === 'bmx' ? 'bmx' : bike.steering.bar];
  const place = (list: BarShape['bar']) =>
    list.map(([x, y]) => shifted(clamp, x * small, y * small));
  const width = shape.width * (small < 0.9 ? 0.9 : 1);
  const grip = tube(
    'grips',
    place(shape.grip),
    shape.width + (bike.steering.bar === 'drop' ? 0 : 10),
  );
  const lever = place(shape.lever);
  return {
    headset,
    stem,
    cap,
    clamp,
    bar: [tube('bar', place(shape.bar), width)],
    grip,
    lever: tube('right-lever', lever, 15, 10),
    leverBase: lever[0] ?? clamp,
    top: Math.min(cap.y, ...place(shape.bar).map((p) => p.y), ...grip.line.map((p) => p.y)),
  };
}

function threadless(
  seat: Point,
  up: Point,
  rise: number,
  length: number,
  spacers: number,
  small: number,
) {
  const foot = moved(seat, up, spacers);
  const middle = moved(foot, up, 21 * small);
  const head = moved(foot, up, 42 * small);
  const clamp = moved(middle, upwards(rise), length);
  const stem = [
    tube('headset', [seat, foot], 36 * small),
    tube('stem', [middle, clamp], 36 * small, 34 * small),
    tube('stem', [foot, head], 40 * small),
  ];
  return { stem, clamp, cap: moved(head, up, 5) };
}

function quill(seat: Point, up: Point, rise: number, length: number, spacers: number) {
  const neck = moved(seat, up, 46 + spacers);
  const clamp = moved(neck, upwards(rise), length);
  const stem = [
    tube('headset', [seat, moved(seat, up, 12)], 40),
    tube('stem', [moved(seat, up, 12), moved(neck, up, 14)], 24),
    tube('stem', [moved(neck, towards(clamp, neck), 10), clamp], 26, 28),
  ];
  return { stem, clamp, cap: moved(neck, up, 17) };
}
