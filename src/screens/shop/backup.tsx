/** The backup: one tap to a file or a chosen folder, when the last one was, and the way to files that come back. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, Notice, Problem, Working } from '../parts';
import { routes } from '../routes';
import { sizeText } from '../size-text';
import styles from './shop.module.css';

export function Backup() {
  const app = useApp();
  const [, go] = useLocation();
  const { last, folder, loaded } = useStore(app.backup);
  const { said, problem, progress, isBusy, save, choose } = useSaving();
  return (
    <section className={styles.keeping}>
      <h2>{words.backup.title}</h2>
      <p>{words.backup.text}</p>
      {loaded && (
        <p>
          {last === undefined
            ? words.backup.never
            : words.backup.last(words.date(last.day), last.records)}{' '}
          {folder !== undefined && words.backup.chosen(folder.name)}
        </p>
      )}
      {isBusy && (
        <Working>
          {progress === undefined ? words.backup.starting : words.backup.saving(...progress)}
        </Working>
      )}
      {said !== undefined && (
        <Notice as="status">
          <p>{said}</p>
        </Notice>
      )}
      <Problem>{problem}</Problem>
      <div className={styles.buttons}>
        {folder !== undefined && (
          <Button busy={isBusy} onPress={() => void save('folder')}>
            {words.backup.saveInto(folder.name)}
          </Button>
        )}
        <Button busy={isBusy} onPress={() => void save('download')}>
          {words.backup.save}
        </Button>
        {app.canChooseFolder && (
          <Button onPress={() => void choose()}>
            {folder === undefined ? words.backup.choose : words.backup.chooseAnother}
          </Button>
        )}
        <Button onPress={() => go(routes.takeIn)}>{words.backup.open}</Button>
        <Button onPress={() => go(routes.dayPage)}>{words.backup.day}</Button>
      </div>
    </section>
  );
}

function useSaving() {
  const app = useApp();
  const [said, say] = useState<string>();
  const [problem, setProblem] = useState<string>();
  const [isBusy, setBusy] = useState(false);
  const [progress, setProgress] = useState<readonly [number, number]>();

  async function save(to: 'download' | 'folder'): Promise<void> {
    say(undefined);
    setProblem(undefined);
    setProgress(undefined);
    setBusy(true);
    const saved = await app.saveBackup(to, (done, of) => setProgress([done, of]));
    setBusy(false);
    if (!saved.ok) return setProblem(fileWords.refusal({ ...saved.refusal }));
    const { records, size } = saved.value;
    const what = words.backup.saved(records, sizeText(size));
    say(to === 'download' ? `${what} ${words.backup.inDownloads}` : what);
  }

  async function choose(): Promise<void> {
    setProblem(undefined);
    const chosen = await app.chooseBackupFolder();
    if (!chosen.ok) setProblem(fileWords.refusal({ ...chosen.refusal }));
  }

  return { said, problem, progress, isBusy, save, choose };
}
