/** One record file on its way in: looked at, then taken in or restored, with a sign of how far it is. */

import { useState } from 'react';
import type { FileLooked, TakenIn } from '../../state';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';

export function useTakingIn() {
  const app = useApp();
  const [looked, setLooked] = useState<FileLooked>();
  const [older, setOlder] = useState<File>();
  const [taken, setTaken] = useState<TakenIn>();
  const [isRestored, setRestored] = useState(false);
  const [problem, setProblem] = useState<string>();
  const [working, setWorking] = useState<string>();

  async function look(file: File): Promise<void> {
    setLooked(undefined);
    setOlder(undefined);
    setTaken(undefined);
    setProblem(undefined);
    setWorking(fileWords.takeIn.opening);
    if (await isJson(file)) setOlder(file);
    else {
      const answer = await app.lookAtFile(file, (done, of) =>
        setWorking(fileWords.takeIn.looking(done, of)),
      );
      if (answer.ok) setLooked(answer.value);
      else setProblem(fileWords.refusal({ ...answer.refusal }));
    }
    setWorking(undefined);
  }

  async function restoreOlder(): Promise<void> {
    if (older === undefined) return;
    setWorking(fileWords.takeIn.opening);
    const restored = await app.restoreOlderCopy(older);
    setWorking(undefined);
    setOlder(undefined);
    if (!restored.ok) return setProblem(fileWords.refusal({ ...restored.refusal }));
    setRestored(true);
    setTaken({ fresh: restored.value, grown: 0, known: 0, entries: 0, refused: [] });
  }

  async function take(): Promise<void> {
    if (looked === undefined) return;
    finish(await app.takeInRecords(looked, tellTaking), false);
  }

  async function restore(): Promise<void> {
    if (looked === undefined) return;
    finish(await app.restoreBackup(looked, tellTaking), true);
  }

  function tellTaking(done: number, of: number): void {
    setWorking(fileWords.takeIn.taking(done, of));
  }

  function finish(
    answer: Awaited<ReturnType<typeof app.restoreBackup>>,
    isWholeShop: boolean,
  ): void {
    setWorking(undefined);
    if (answer.ok) {
      setLooked(undefined);
      setRestored(isWholeShop);
      setTaken(answer.value);
    } else setProblem(fileWords.refusal({ ...answer.refusal }));
  }

  return {
    looked,
    older,
    taken,
    isRestored,
    problem,
    working,
    look,
    take,
    restore,
    restoreOlder,
  };
}

/** A copy from an earlier version is plain text that begins with a brace; a record file never does. */
async function isJson(file: File): Promise<boolean> {
  const start = await file.slice(0, 64).arrayBuffer();
  return new TextDecoder().decode(start).trimStart().startsWith('{');
}
