/** What was noted of a person: joining, leaving, new PINs with who gave them and why, wrong PINs. */

import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useNames } from '../app-context';
import { Dialog } from '../parts';
import styles from './shop.module.css';

interface PersonHistoryProps {
  readonly person: Person;
  readonly onClose: () => void;
}

export function PersonHistory({ person, onClose }: PersonHistoryProps) {
  const names = useNames(undefined);
  const notes = [...(person.history ?? [])].reverse();
  return (
    <Dialog
      title={peopleLabels.historyOf(person.name)}
      closeLabel={words.app.close}
      onClose={onClose}
      wide
    >
      {notes.length === 0 && <p>{peopleLabels.historyEmpty}</p>}
      <ul className={styles.people}>
        {notes.map((note, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: notes are only ever added, newest first
          <li key={notes.length - index} className={styles.note}>
            <strong>
              {peopleLabels.notes[note.kind]}
              {note.kind === 'new-pin' && `: ${note.reason}`}
            </strong>
            <span>{peopleLabels.noteBy(note.at.claimed, note.by && names.person(note.by))}</span>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
