/** What comes after this step, as the bar says it. */

import { standingOfStep, stepsOf, whatNow } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import { words } from '../../words';
import type { ShownJob } from '../use-job';

export function nextTitle({ open }: ShownJob, step: PlanStep): string {
  const { state } = open;
  const later = stepsOf(state).filter(
    ({ id }) => id !== step.id && standingOfStep(state, id) !== 'done',
  );
  if (later.length === 0) return words.stand.walkNext;
  const now = whatNow(state);
  const index = stepsOf(state).indexOf(step);
  const following =
    now.what === 'step' && now.step !== step.id
      ? later.find(({ id }) => id === now.step)
      : (later.find((other) => stepsOf(state).indexOf(other) > index) ?? later[0]);
  return words.stand.next(lowerFirst(following?.title ?? ''));
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
