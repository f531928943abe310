/** Typical proportions by kind of bike, mm and degrees: drawn true to the kind, not to this frame's measure (common practice, no source). */

import type { Bike } from '../../engine/bike';

export interface Proportions {
  readonly headAngle: number;
  readonly seatAngle: number;
  readonly headTube: number;
  /** From the bottom bracket to the top of the head tube, level. */
  readonly reach: number;
  readonly chainstay: number;
  /** How far the bottom bracket lies below the rear axle. */
  readonly drop: number;
  /** From the tyre to the crown of a rigid fork. */
  readonly crownClearance: number;
  /** Travel of a suspension fork. */
  readonly travel: number;
  readonly rake: number;
  readonly seatTube: number;
  /** From the bottom bracket to the top of the saddle, along the seat tube. */
  readonly saddleHeight: number;
  readonly crank: number;
  readonly stem: number;
  /** Degrees the stem rises from the square to the steerer. */
  readonly stemRise: number;
  readonly spacers: number;
  readonly tubes: {
    readonly head: number;
    readonly top: number;
    readonly down: number;
    readonly seat: number;
  };
  readonly spokes: number;
  /** Bead seat diameter and tyre width when the side wall says nothing readable. */
  readonly usualTyre: readonly [width: number, beadSeat: number];
}

type Row = readonly [
  angles: readonly [head: number, seat: number],
  lengths: readonly [headTube: number, reach: number, chainstay: number, drop: number],
  fork: readonly [crownClearance: number, travel: number, rake: number],
  seat: readonly [seatTube: number, saddleHeight: number, crank: number],
  stem: readonly [length: number, rise: number, spacers: number],
  tubes: readonly [head: number, top: number, down: number, seat: number],
  wheels: readonly [spokes: number, width: number, beadSeat: number],
];

const rows: Readonly<Record<Bike['kind'], Row>> = {
  road: [
    [73, 73.5],
    [150, 385, 410, 70],
    [34, 40, 45],
    [500, 725, 172],
    [100, -6, 20],
    [42, 32, 42, 34],
    [24, 28, 622],
  ],
  gravel: [
    [71.5, 73.5],
    [140, 392, 430, 74],
    [46, 40, 48],
    [490, 720, 172],
    [80, -6, 20],
    [44, 34, 46, 34],
    [28, 40, 622],
  ],
  'mountain-hardtail': [
    [67, 74],
    [110, 430, 440, 65],
    [100, 110, 44],
    [430, 690, 172],
    [55, 0, 15],
    [48, 40, 52, 36],
    [32, 57, 622],
  ],
  'mountain-full-suspension': [
    [65.5, 76],
    [110, 455, 440, 30],
    [120, 140, 44],
    [420, 680, 172],
    [45, 0, 15],
    [50, 44, 56, 38],
    [32, 60, 622],
  ],
  town: [
    [69, 70.5],
    [165, 372, 465, 60],
    [42, 50, 56],
    [490, 675, 170],
    [70, 5, 20],
    [38, 32, 36, 32],
    [36, 42, 622],
  ],
  trekking: [
    [70.5, 72.5],
    [150, 388, 455, 66],
    [46, 63, 48],
    [500, 705, 170],
    [85, 10, 25],
    [42, 34, 42, 34],
    [32, 42, 622],
  ],
  folding: [
    [72.5, 72],
    [130, 455, 405, -35],
    [46, 40, 32],
    [330, 680, 170],
    [30, 10, 300],
    [46, 40, 58, 38],
    [28, 47, 406],
  ],
  cargo: [
    [69.5, 71.5],
    [160, 400, 620, 60],
    [46, 63, 45],
    [470, 690, 170],
    [70, 15, 30],
    [46, 40, 48, 36],
    [36, 55, 507],
  ],
  bmx: [
    [74.5, 71],
    [118, 458, 350, -40],
    [62, 40, 32],
    [225, 330, 175],
    [50, 0, 5],
    [44, 38, 40, 32],
    [36, 53, 406],
  ],
  balance: [
    [68, 70],
    [75, 190, 205, -25],
    [42, 20, 25],
    [110, 205, 0],
    [25, 5, 8],
    [34, 28, 34, 28],
    [16, 57, 203],
  ],
  child: [
    [69.5, 71.5],
    [95, 312, 362, 2],
    [50, 40, 38],
    [270, 465, 140],
    [50, 10, 10],
    [38, 32, 38, 32],
    [20, 47, 406],
  ],
  tandem: [
    [72.5, 73],
    [155, 395, 440, 70],
    [40, 63, 48],
    [510, 710, 172],
    [100, 0, 25],
    [44, 38, 48, 36],
    [36, 32, 622],
  ],
};

export function proportionsOf(kind: Bike['kind']): Proportions {
  const [angles, lengths, fork, seat, stem, tubes, wheels] = rows[kind];
  return {
    headAngle: angles[0],
    seatAngle: angles[1],
    headTube: lengths[0],
    reach: lengths[1],
    chainstay: lengths[2],
    drop: lengths[3],
    crownClearance: fork[0],
    travel: fork[1],
    rake: fork[2],
    seatTube: seat[0],
    saddleHeight: seat[1],
    crank: seat[2],
    stem: stem[0],
    stemRise: stem[1],
    spacers: stem[2],
    tubes: { head: tubes[0], top: tubes[1], down: tubes[2], seat: tubes[3] },
    spokes: wheels[0],
    usualTyre: [wheels[1], wheels[2]],
  };
}

/** Bikes for growing riders follow their wheel; the others are sized for an adult whatever the wheel. */
export function scaledToWheel(
  proportions: Proportions,
  kind: Bike['kind'],
  radius: number,
): Proportions {
  if (kind !== 'child' && kind !== 'balance') return proportions;
  const [width, beadSeat] = proportions.usualTyre;
  const share = radius / (beadSeat / 2 + width);
  const { headAngle, seatAngle, stemRise, tubes, spokes, usualTyre, ...lengths } = proportions;
  const scaled = Object.fromEntries(
    Object.entries(lengths).map(([name, length]) => [name, length * share]),
  ) as typeof lengths; // the same names, each length multiplied
  return { ...scaled, headAngle, seatAngle, stemRise, tubes, spokes, usualTyre };
}
