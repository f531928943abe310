/** The zones as a route: what is done recedes, the one now stands out, what is left is counted. */

import { useLocation } from 'wouter';
import type { Zone } from '../../engine/base';
import {
  type JobState,
  pointsOf,
  standingOfStep,
  stepsOf,
  uncheckedContents,
  unsettledPoints,
  zoneCounts,
} from '../../engine/job';
import { words } from '../../words';
import { classes } from '../parts';
import { routes } from '../routes';
import styles from './zone-list.module.css';

export interface ZoneListProps {
  readonly job: string;
  readonly state: JobState;
  readonly current: Zone | undefined;
  readonly onChoose: (step: string) => void;
  readonly onContents: () => void;
}

export function ZoneList({ job, state, current, onChoose, onContents }: ZoneListProps) {
  const [, go] = useLocation();
  const points = pointsOf(state).length;
  const settled = points - unsettledPoints(state).length;
  return (
    <ul className={styles.zones}>
      <Row label={words.contents.zone} count={contentsCount(state)} soft onPress={onContents} />
      {zoneCounts(state).map(({ zone, done, of }) => {
        const standings = stepsOf(state)
          .filter((step) => step.zone === zone)
          .map(({ id }) => standingOfStep(state, id));
        const isStale = standings.includes('stale');
        const aside = standings.filter((standing) => standing === 'set-aside').length;
        return (
          <Row
            key={zone}
            label={words.terms.zoneNames[zone]}
            count={[
              done === 0 ? words.stand.toDo(of) : words.stand.zoneDone(done, of),
              ...(aside > 0 ? [words.stand.aside(aside)] : []),
              ...(isStale ? [words.stand.stale] : []),
            ].join(' · ')}
            now={zone === current}
            soft={done === of}
            stale={isStale}
            onPress={() => onChoose(firstOf(state, zone))}
          />
        );
      })}
      <Row
        label={words.stand.mCheck}
        count={
          settled === 0 ? words.stand.pointsToDo(points) : words.stand.pointsDone(settled, points)
        }
        onPress={() => go(routes.walk(job))}
      />
    </ul>
  );
}

interface RowProps {
  readonly label: string;
  readonly count: string;
  readonly now?: boolean;
  readonly soft?: boolean;
  readonly stale?: boolean;
  readonly onPress: () => void;
}

function Row({ label, count, now = false, soft = false, stale = false, onPress }: RowProps) {
  return (
    <li>
      <button
        type="button"
        aria-current={now ? 'step' : undefined}
        className={classes(
          styles.row,
          now && styles.now,
          soft && !now && styles.soft,
          stale && styles.stale,
        )}
        onClick={onPress}
      >
        <span>{label}</span>
        <span>{count}</span>
      </button>
    </li>
  );
}

function contentsCount(state: JobState): string {
  const unchecked = uncheckedContents(state).length;
  if (unchecked > 0) return words.contents.toCheck(unchecked);
  const marks = Object.values(state.contents);
  const short = marks.filter((mark) => mark.state !== 'present').length;
  return short > 0 ? words.contents.short(short) : words.contents.allPresent(marks.length);
}

/** The zone's first unfinished step, or its first. */
function firstOf(state: JobState, zone: Zone): string {
  const steps = stepsOf(state).filter((step) => step.zone === zone);
  const open = steps.find(({ id }) => standingOfStep(state, id) !== 'done');
  return (open ?? steps[0])?.id ?? '';
}
