/** The line above a job: the way back to the rack, which bike, its frame number, when it is due, who is there. */

import { Link } from 'wouter';
import type { JobState } from '../engine/job';
import { words } from '../words';
import { HandsButton, SomebodyFirst } from './hands';
import styles from './job-head.module.css';
import { routes } from './routes';

export function JobHead({ state }: { readonly state: JobState }) {
  const { bike, due } = state;
  if (bike === undefined) return null;
  return (
    <header className={styles.head}>
      <Link href={routes.rack} className={styles.rack}>
        {words.app.rack}
      </Link>
      <strong>
        {bike.make} {bike.model}
      </strong>
      <span>{bike.frameNumber}</span>
      <span className={styles.due}>
        {due !== undefined && `${words.rack.due} ${words.day(due)} ${words.time(due)}`}
      </span>
      <HandsButton />
      <SomebodyFirst />
    </header>
  );
}
