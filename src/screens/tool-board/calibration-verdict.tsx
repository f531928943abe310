/** What the test points say, as soon as they are there. */

import type { Wrench } from '../../engine/torque';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { Notice } from '../parts';
import type { Judged } from './calibration-draft';

export interface CalibrationVerdictProps {
  readonly judged: Judged;
  readonly wrench: Wrench;
  /** After an adjustment: nothing that was tightened before hangs on it. */
  readonly isLeft?: boolean;
}

export function CalibrationVerdict({ judged, wrench, isLeft = false }: CalibrationVerdictProps) {
  const { writing } = words;
  const { calibration } = boardWords;
  const { result, refusal } = judged;
  if (refusal !== undefined)
    return (
      <Notice as="alert">
        <p>{words.refusal({ ...refusal })}</p>
      </Notice>
    );
  if (result === undefined) return null;
  const percent = writing.figure(result.permissible * 100);
  const at = (value: number) => `${writing.figure(value, 2)} ${wrench.unit}`;
  const outside = result.points.filter(({ within }) => !within).map((point) => at(point.at));
  if (outside.length > 0)
    return (
      <Notice as="alert">
        <p>
          {isLeft
            ? words.refusal({ code: 'wrench-left-outside', wrench: wrench.id })
            : calibration.someOutside(writing.listed(outside), percent)}
        </p>
      </Notice>
    );
  if (!judged.isComplete) return null;
  return (
    <Notice as="status">
      <p>{calibration.allInside(percent)}</p>
      {result.untested.length > 0 && (
        <p>{calibration.untested(writing.listed(result.untested.map(at)))}</p>
      )}
    </Notice>
  );
}
