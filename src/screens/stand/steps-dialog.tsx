/** The steps of one zone, each with how it stands: the way to one that is done, or comes later. */

import { type JobState, standingOfStep, stepsOf } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import { words } from '../../words';
import { classes, Dialog } from '../parts';
import styles from './zone-list.module.css';

export interface StepsDialogProps {
  readonly state: JobState;
  readonly current: PlanStep;
  readonly onChoose: (step: string) => void;
  readonly onClose: () => void;
}

export function StepsDialog({ state, current, onChoose, onClose }: StepsDialogProps) {
  const steps = stepsOf(state).filter(({ zone }) => zone === current.zone);
  return (
    <Dialog
      title={words.stand.stepsOf(words.terms.zoneNames[current.zone])}
      closeLabel={words.app.close}
      onClose={onClose}
      wide
    >
      <ul className={styles.zones}>
        {steps.map(({ id, title }) => {
          const standing = standingOfStep(state, id);
          const isCurrent = id === current.id;
          return (
            <li key={id}>
              <button
                type="button"
                aria-current={isCurrent ? 'step' : undefined}
                className={classes(
                  styles.row,
                  styles.step,
                  isCurrent && styles.now,
                  standing === 'done' && !isCurrent && styles.soft,
                  standing === 'stale' && styles.stale,
                )}
                onClick={() => onChoose(id)}
              >
                <span>{title}</span>
                <span>{words.stand.standings[standing]}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </Dialog>
  );
}
