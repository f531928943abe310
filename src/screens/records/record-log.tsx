/** The whole log of a record, entry by entry, as it was written. */

import type { Entry } from '../../engine/integrity';
import { type Names, words } from '../../words';
import styles from './records.module.css';

export function RecordLog({
  entries,
  names,
}: {
  readonly entries: readonly Entry[];
  readonly names: Names;
}) {
  return (
    <section className={styles.log} data-on-screen-only>
      <h2>{words.records.log}</h2>
      <ol>
        {entries.map(({ id, at, by, event }) => (
          <li key={id}>
            <span>
              {words.date(at.claimed)} {words.time(at.claimed)}
            </span>{' '}
            {names.person(by)} · {event.kind.replaceAll('-', ' ')} {aboutText(event, names)}
            <span className={styles.digest}> {id.slice(0, 12)}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function aboutText(event: object, names: Names): string {
  const facts = event as Readonly<Record<string, unknown>>; // an event is a record of facts
  if (typeof facts.step === 'string') return names.step(facts.step);
  if (typeof facts.joint === 'string') return names.joint(facts.joint);
  if (typeof facts.point === 'string') return names.point(facts.point);
  if (typeof facts.text === 'string') return facts.text;
  return typeof facts.reason === 'string' ? facts.reason : '';
}
