/** Limits of fit that a rider's body depends on: toe clearance, lever reach, and the size of the bar. */

import { type Millimetres, millimetres } from '../units';

export interface FitLimit {
  readonly id: string;
  readonly min?: Millimetres;
  readonly max?: Millimetres;
  readonly source: string;
}

const toes = 'ISO 4210-2, 4.13.2.2';
const levers = 'JIS D 9301:2019, 5.2.2; ISO 4210-2 (from memory)';
const bars = 'ISO 4210-2, 4.7.1';

export const fitLimits = {
  toeClearance: { id: 'toe-clearance', min: millimetres(100), source: toes },
  toeClearanceYoungAdult: { id: 'toe-clearance-young-adult', min: millimetres(89), source: toes },
  toeClearanceFootRetention: {
    id: 'toe-clearance-foot-retention',
    min: millimetres(89),
    source: toes,
  },
  toeClearanceUs: { id: 'toe-clearance-us', min: millimetres(89), source: '16 CFR 1512.17(d)' },
  leverReach: { id: 'lever-reach', max: millimetres(90), source: levers },
  leverReachSmallBike: { id: 'lever-reach-small-bike', max: millimetres(75), source: levers },
  leverReachUs: { id: 'lever-reach-us', max: millimetres(89), source: '16 CFR 1512.5(b)(3)' },
  leverReachUsSidewalk: {
    id: 'lever-reach-us-sidewalk',
    max: millimetres(76),
    source: '16 CFR 1512.5(b)(3)',
  },
  barWidth: { id: 'bar-width', min: millimetres(350), max: millimetres(1000), source: bars },
  gripAboveSaddle: { id: 'grip-above-saddle', max: millimetres(400), source: bars },
} as const satisfies Readonly<Record<string, FitLimit>>;

/**
 * The least distance from the pedal's centre line, foot on the pedal, to the tyre or mudguard at full lock, in mm.
 * In the US the rule counts for pedals without foot retention; with it, nothing is asked there, and ISO's figure is used.
 */
export function toeClearanceLimit(asked: {
  readonly youngAdult?: boolean;
  readonly footRetention?: boolean;
  readonly us?: boolean;
}): FitLimit {
  if (asked.footRetention) return fitLimits.toeClearanceFootRetention;
  if (asked.us) return fitLimits.toeClearanceUs;
  return asked.youngAdult ? fitLimits.toeClearanceYoungAdult : fitLimits.toeClearance;
}

/** The greatest distance from grip to brake lever, outside to outside, in mm; small bikes have a saddle below 635 mm. */
export function leverReachLimit(asked: {
  readonly saddleHeight: Millimetres;
  readonly us?: boolean;
}): FitLimit {
  const small = asked.saddleHeight < 635;
  if (asked.us) return small ? fitLimits.leverReachUsSidewalk : fitLimits.leverReachUs;
  return small ? fitLimits.leverReachSmallBike : fitLimits.leverReach;
}
