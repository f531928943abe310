/** Readings of one pass, bolt by bolt in the order drawn: kept as they come, judged at once, recorded with the pass. */

import { useState } from 'react';
import { type BoltReading, lastOfEachBolt, verdictOf } from '../../engine/job';
import {
  type Adapter,
  type Figure,
  probabilityInside,
  type ReadingVerdict,
} from '../../engine/torque';
import { newtonMetres, parseTypedReading } from '../../engine/units';
import { type ReadJoint, useKeptReadings } from './kept-readings';
import { useTypedReading } from './use-typed-reading';

export interface ReadingRow extends BoltReading {
  /** As drawn: its turn in the order of this pass. */
  readonly turn: number;
  readonly judged: ReadingVerdict;
  /** 0 to 1; only where it is a question. */
  readonly inside?: number | undefined;
}

export interface Readings {
  /** On the way up only the upper end of the figure counts. */
  readonly isRising: boolean;
  /** The last reading of each bolt, in the order drawn. */
  readonly rows: readonly ReadingRow[];
  /** Whose reading comes next, and whether that bolt has to be brought right first. */
  readonly next: { readonly turn: number; readonly isWrong: boolean } | undefined;
  /** What the wrench typed last and nobody could use. */
  readonly unused: { readonly text: string; readonly because: 'not-read' | 'surplus' } | undefined;
  readonly again: (bolt: number) => void;
  readonly takeBack: () => void;
  /** What goes into the pass: nothing where nobody read a wrench. */
  readonly asked: { readonly readings?: readonly BoltReading[] };
}

export interface ReadingsOf extends Omit<ReadJoint, 'adapterId'> {
  readonly adapter: (Adapter & { readonly id: string }) | undefined;
  /** Not while a dialog asks for something else. */
  readonly isListening: boolean;
}

export function useReadings(joint: ReadingsOf): Readings {
  const { next, wrench, adapter, isListening } = joint;
  const { of, kept, keep } = useKeptReadings({ ...joint, adapterId: adapter?.id });
  const [chosen, choose] = useState<{ readonly of: string; readonly bolt: number }>();
  const [unused, setUnused] = useState<Readings['unused']>();
  const order = next?.pass.order ?? [];
  const rows = rowsOf(joint, kept);
  const wrong = rows.find(({ judged }) => judged === 'outside')?.bolt;
  const unread = order.find((bolt) => !rows.some((row) => row.bolt === bolt));
  const picked = chosen?.of === of ? chosen.bolt : undefined;
  const bolt = picked ?? wrong ?? unread;

  useTypedReading(isListening && next !== undefined && wrench !== undefined, (text) => {
    const typed = wrench && parseTypedReading(text, wrench.unit, joint.step.joint?.hand);
    if (!typed?.ok) return setUnused({ text, because: 'not-read' });
    if (bolt === undefined) return setUnused({ text, because: 'surplus' });
    setUnused(undefined);
    choose(undefined);
    const { torque: value, halfStep } = typed.value;
    keep([...kept, { bolt, value, halfStep, text }]);
  });

  return {
    isRising: next?.pass.kind === 'rising',
    rows,
    next: bolt === undefined ? undefined : { turn: turnOf(order, bolt), isWrong: bolt === wrong },
    unused,
    again: (again) => choose({ of, bolt: again }),
    takeBack: () => {
      setUnused(undefined);
      choose(undefined);
      keep(kept.slice(0, -1));
    },
    asked: kept.length > 0 ? { readings: kept } : {},
  };
}

function rowsOf(
  { next, wrench, adapter }: ReadingsOf,
  kept: readonly BoltReading[],
): readonly ReadingRow[] {
  if (next === undefined || wrench === undefined) return [];
  const { figure, pass } = next;
  return lastOfEachBolt(kept)
    .map((reading) => {
      const judged = verdictOf({ figure, pass, wrench, adapter }, reading);
      const inside =
        judged === 'undecided' && pass.kind !== 'rising'
          ? probabilityOf({ figure, wrench, adapter }, reading)
          : undefined;
      return { ...reading, turn: turnOf(pass.order, reading.bolt), judged, inside };
    })
    .sort((a, b) => a.turn - b.turn);
}

function probabilityOf(
  ground: Pick<ReadingsOf, 'adapter'> & {
    readonly figure: Figure;
    readonly wrench: NonNullable<ReadingsOf['wrench']>;
  },
  { value, halfStep }: BoltReading,
): number | undefined {
  return probabilityInside({ ...ground, reading: newtonMetres(value), halfStep });
}

function turnOf(order: readonly number[], bolt: number): number {
  return order.indexOf(bolt) + 1;
}
