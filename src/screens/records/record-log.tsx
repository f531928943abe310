/** The whole log of a record, entry by entry, in sentences: what, to which value, by whom and when. */

import type { Entry } from '../../engine/integrity';
import type { JobState } from '../../engine/job';
import { type Names, words } from '../../words';
import { loggedSentence } from '../../words/record';
import styles from './records.module.css';

export interface RecordLogProps {
  readonly entries: readonly Entry[];
  readonly state: JobState;
  readonly names: Names;
}

export function RecordLog({ entries, state, names }: RecordLogProps) {
  return (
    <section className={styles.log} data-on-screen-only>
      <h2>{words.records.log}</h2>
      <ol>
        {entries.map(({ id, at, by, event }) => (
          <li key={id}>
            <span className={styles.when}>
              {words.date(at.claimed)} {words.time(at.claimed)}, {names.person(by)}
            </span>
            <br />
            {loggedSentence(event, { names, state })}
            <span className={styles.digest}> {id.slice(0, 12)}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
