/** What somebody says about a part that is missing or damaged. */

import { useState } from 'react';
import type { PartMark } from '../../engine/job';
import { words } from '../../words';
import { Button, Dialog, TextField } from '../parts';
import styles from './contents.module.css';

/** What the part is, and of one that is missing or damaged what somebody said about it. */
export function PartName({
  name,
  mark,
  onNote,
}: {
  readonly name: string;
  readonly mark: PartMark | undefined;
  readonly onNote: () => void;
}) {
  if (mark === undefined || mark.state === 'present')
    return <span className={styles.name}>{name}</span>;
  return (
    <span className={styles.name}>
      {name}
      {mark.note !== undefined && <span className={styles.note}> {mark.note}</span>}
      <Button tone="quiet" label={words.contents.noteOn(name)} onPress={onNote}>
        {words.contents.note}
      </Button>
    </span>
  );
}

export function NoteDialog({
  name,
  onClose,
  onNote,
}: {
  readonly name: string;
  readonly onClose: () => void;
  readonly onNote: (note: string) => void;
}) {
  const [note, setNote] = useState('');
  return (
    <Dialog
      title={words.contents.noteOn(name)}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" disabled={note.trim() === ''} onPress={() => onNote(note.trim())}>
          {words.contents.keepNote}
        </Button>
      }
    >
      <TextField label={words.contents.noteAsk} value={note} onChange={setNote} maxLength={200} />
    </Dialog>
  );
}
