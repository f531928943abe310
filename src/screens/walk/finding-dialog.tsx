/** Writes a finding down: how bad, what, and a picture where it helps. */

import { useState } from 'react';
import { type Severity, severities } from '../../engine/inspection';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, Choice, Dialog, FilePicker, Notice, TextField } from '../parts';
import type { ShownJob } from '../use-job';
import styles from './walk.module.css';

export interface WrittenFinding {
  readonly severity: Severity;
  readonly text: string;
  readonly photos: readonly string[];
}

export interface FindingDialogProps {
  readonly shown: ShownJob;
  readonly severity: Severity;
  /** What was measured outside its limit, to begin with. */
  readonly value?: string | undefined;
  readonly onClose: () => void;
  readonly onFinding: (finding: WrittenFinding) => Promise<void>;
}

export function FindingDialog(props: FindingDialogProps) {
  const { severity: offered, value = '', onClose, onFinding } = props;
  const app = useApp();
  const [severity, setSeverity] = useState(offered);
  const [text, setText] = useState(value);
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [problem, setProblem] = useState<string>();
  const photograph = async (file: File) => {
    const kept = await app.keepPhoto(file);
    if (kept.ok) setPhotos([...photos, kept.value]);
    else setProblem(words.refusal({ ...kept.refusal }));
  };
  return (
    <Dialog
      title={words.walk.wrongTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button
          tone="solid"
          onPress={() =>
            text.trim() === ''
              ? setProblem(words.refusal({ code: 'finding-missing' }))
              : void onFinding({ severity, text, photos })
          }
        >
          {words.walk.write}
        </Button>
      }
    >
      <Choice
        label={words.walk.severity}
        value={severity}
        onChange={setSeverity}
        options={severities.map((value) => ({
          value,
          label: words.terms.severities[value],
          detail: words.terms.severityDetails[value],
        }))}
      />
      <TextField
        label={words.walk.what}
        value={text}
        onChange={setText}
        maxLength={200}
        error={problem}
      />
      <div className={styles.others}>
        <FilePicker accept="image/*" capture onPick={(file) => void photograph(file)}>
          {words.walk.photo}
        </FilePicker>
        {photos.length > 0 && <p role="status">{words.walk.photoTaken}</p>}
      </div>
      <Notice>
        <p>{words.walk.caution}</p>
      </Notice>
    </Dialog>
  );
}
