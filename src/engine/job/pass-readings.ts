/** Readings of a wrench that shows what it delivers, bolt by bolt: judged before the pass they belong to is kept. */

import { ok, type Result, refuse } from '../base';
import {
  type Adapter,
  type Figure,
  judgeReading,
  type Pass,
  type ReadingVerdict,
  type Wrench,
} from '../torque';
import { newtonMetres } from '../units';
import type { ReadingTaken } from './event.schema';

/** What was read at one bolt: N·m at the wrench, and the text as the wrench typed it. */
export interface BoltReading {
  /** From 1, as the bolts are drawn. */
  readonly bolt: number;
  readonly value: number;
  /** N·m: half of the last digit that was shown, where it was shown in digits. */
  readonly halfStep?: number;
  readonly text: string;
}

/** What a reading is judged by. */
export type ReadingGround = Pick<ReadPass, 'figure' | 'wrench' | 'adapter'> & {
  readonly pass: Pick<Pass, 'kind'>;
};

type Shown = Pick<BoltReading, 'value' | 'halfStep'>;

export interface ReadPass {
  readonly joint: string;
  readonly bolts: number;
  readonly figure: Figure;
  readonly pass: Pick<Pass, 'kind' | 'order'>;
  readonly wrench: Wrench;
  readonly adapter?: Adapter | undefined;
  readonly readings: readonly BoltReading[];
}

/**
 * Every reading with its verdict. A bolt may be read again: the last reading of each counts. Refuses a reading of a bolt
 * that the joint does not have or that is no torque, and a pass in which some bolt's last reading is surely outside.
 */
export function judgeReadings(read: ReadPass): Result<readonly ReadingTaken[], ReadingRefusal> {
  const { joint, bolts, readings } = read;
  for (const { bolt, value, halfStep = 0, text } of readings) {
    const isBolt = Number.isInteger(bolt) && bolt >= 1 && bolt <= bolts;
    const isReading = isBolt && isTorque(value) && halfStep >= 0 && halfStep < value;
    if (!isReading) return refuse({ code: 'reading-impossible', bolt, text });
  }
  const taken = readings.map((reading) => ({ ...reading, judged: verdictOf(read, reading) }));
  const wrong = lastOfEachBolt(taken).find(({ judged }) => judged === 'outside');
  if (wrong === undefined) return ok(taken);
  const side = isAbove(read, wrong) ? 'above' : 'below';
  const { bolt, text } = wrong;
  const turn = read.pass.order.indexOf(bolt) + 1;
  return refuse({ code: 'reading-outside-figure', joint, bolt, turn, text, side });
}

export type ReadingRefusal =
  | { readonly code: 'reading-impossible'; readonly bolt: number; readonly text: string }
  | {
      readonly code: 'reading-outside-figure';
      readonly joint: string;
      readonly bolt: number;
      /** The same bolt as it is drawn: its turn in the order of this pass. */
      readonly turn: number;
      readonly text: string;
      readonly side: 'above' | 'below';
    };

/** A bolt that was read again holds by what was read last; in the order in which the bolts were first read. */
export function lastOfEachBolt<Reading extends { readonly bolt: number }>(
  readings: readonly Reading[],
): readonly Reading[] {
  return [...new Map(readings.map((reading) => [reading.bolt, reading])).values()];
}

/** A rising pass ends below the figure by intent, so only its upper end counts there. */
export function verdictOf(
  { figure, pass, wrench, adapter }: ReadingGround,
  { value, halfStep }: Shown,
): ReadingVerdict {
  const limits = pass.kind === 'rising' ? upperEndOf(figure) : figure;
  if (limits === undefined) return 'inside';
  return judgeReading({ figure: limits, wrench, adapter, reading: newtonMetres(value), halfStep });
}

/** Surely beyond the upper end alone. */
function isAbove(read: ReadPass, shown: Shown): boolean {
  return verdictOf({ ...read, pass: { kind: 'rising' } }, shown) === 'outside';
}

function upperEndOf({ max, target }: Figure): Pick<Figure, 'max'> | undefined {
  const end = max ?? target;
  return end && { max: end };
}

function isTorque(value: number): boolean {
  return Number.isFinite(value) && value > 0;
}
