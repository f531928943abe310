/** The last value of one quantity, wherever it was taken: a step sets it, the walk looks at it again. */

import type { PlanMeasure } from '../plan';
import { measuresAt } from './measuring';
import type { JobState, MeasureMark } from './state';
import { pointsOf, stepById } from './status';

export interface LatestMeasure extends MeasureMark {
  /** The step or point where it was taken. */
  readonly place: string;
}

/**
 * What is known last of a quantity, in its measure's own unit: the value taken last at any step or point whose measure
 * carries this id. Where several points each see one side of it, the side nearest to its limit. Values that went stale
 * count only while there is no other.
 */
export function latestMeasure(state: JobState, measure: string): LatestMeasure | undefined {
  const taken = takenInTurn(state, quantityOf(measure));
  const sides = pointsOf(state).filter((point) => isOf(point.measure, quantityOf(measure)));
  if (sides.length < 2) return taken.at(-1);
  const atStep = taken.findLastIndex(({ place }) => stepById(state, place) !== undefined);
  const since = taken.slice(atStep + 1);
  // A side that nobody has looked at since the step is as the step said: no better than its value.
  const known = sides.every(({ id }) => since.some(({ place }) => place === id))
    ? since
    : undefined;
  return nearestToLimit(state, measure, known ?? taken.slice(Math.max(atStep, 0)));
}

/** In the order in which they were taken, which is the order of their keys. */
function takenInTurn(state: JobState, quantity: string): readonly LatestMeasure[] {
  const taken = Object.entries(state.measures).flatMap(([key, mark]) => {
    const dot = key.indexOf('.');
    return quantityOf(key.slice(dot + 1)) === quantity
      ? [{ ...mark, place: key.slice(0, dot) }]
      : [];
  });
  const standing = taken.filter(({ stale }) => !stale);
  return standing.length > 0 ? standing : taken;
}

function nearestToLimit(
  state: JobState,
  measure: string,
  taken: readonly LatestMeasure[],
): LatestMeasure | undefined {
  const room = ({ place, value }: LatestMeasure) => {
    const { min = -Infinity, max = Infinity } =
      measuresAt(state, place).find((one) => isOf(one, quantityOf(measure)))?.limit ?? {};
    return Math.min(value - min, max - value);
  };
  const [first, ...others] = taken;
  return others.reduce<LatestMeasure | undefined>(
    (least, one) => (least !== undefined && room(least) <= room(one) ? least : one),
    first,
  );
}

function isOf(measure: PlanMeasure | undefined, quantity: string): boolean {
  return measure !== undefined && quantityOf(measure.id) === quantity;
}

/** Plans frozen before the walk's measures bore the ids of the steps' name the same quantities like this. */
const formerNames: Readonly<Record<string, string>> = {
  'walk-front-pressure': 'front-pressure',
  'walk-rear-pressure': 'rear-pressure',
  'walk-front-runout': 'front-rim-swing',
  'walk-front-runout-racing': 'front-rim-swing',
  'walk-front-runout-other-brake': 'front-rim-swing',
  'walk-rear-runout': 'rear-rim-swing',
  'walk-rear-runout-racing': 'rear-rim-swing',
  'walk-rear-runout-other-brake': 'rear-rim-swing',
  'walk-quill-insertion': 'quill-inside',
  'walk-seat-post-insertion': 'seat-post-inside',
  'walk-dropper-insertion': 'seat-post-inside',
  'walk-stoker-post-insertion': 'stoker-post-inside',
  'walk-left-grip-distance': 'lever-grip-distance',
  'walk-right-grip-distance': 'lever-grip-distance',
  'walk-left-grip-distance-small': 'lever-grip-distance-small',
  'walk-right-grip-distance-small': 'lever-grip-distance-small',
  'walk-grip-end-width': 'grip-end-width',
  'walk-timing-chain': 'timing-chain-movement',
  'walk-toe-clearance': 'toe-room',
  'walk-chain-slack': 'chain-movement',
};

function quantityOf(measure: string): string {
  return Object.hasOwn(formerNames, measure) ? (formerNames[measure] ?? measure) : measure;
}
