/** A code, a file, or both: read, held against each other and against what this tablet holds, without a network. */

import { useCallback, useState } from 'react';
import type { FileLooked, PrintedCode } from '../../state';
import { fileWords } from '../../words/file-words';
import { useApp, useNames } from '../app-context';
import {
  type Findings,
  findingsOfDay,
  findingsOfDayInFile,
  findingsOfFile,
  findingsOfSheet,
} from './verify-findings';

interface Given {
  readonly code?: PrintedCode;
  readonly file?: FileLooked;
}

export function useVerifying() {
  const app = useApp();
  const { person: nameHere } = useNames(undefined);
  const [given, setGiven] = useState<Given>({});
  const [findings, setFindings] = useState<Findings>();
  const [problem, setProblem] = useState<string>();
  const [working, setWorking] = useState<string>();

  async function hold(now: Given): Promise<void> {
    setGiven(now);
    setWorking(fileWords.verify.checking);
    setFindings(await found(now));
    setWorking(undefined);
  }

  async function found({ code, file }: Given): Promise<Findings | undefined> {
    const nameOf = (id: string) =>
      file?.file.people.people.find((person) => person.id === id)?.name ?? nameHere(id);
    if (code === undefined) return file && findingsOfFile(file, nameOf);
    if (code.kind === 'day') {
      if (file !== undefined) return findingsOfDayInFile(code, file, nameOf);
      const now = await app.dayPage();
      return findingsOfDay(code, now.ok ? now.value.root : undefined);
    }
    if (file !== undefined)
      return findingsOfSheet(code, await app.verifyInFile(file, code), 'file', nameOf);
    const verified = await app.verifyHeld(code);
    if (verified.ok) return findingsOfSheet(code, verified.value, 'here', nameOf);
    setProblem(fileWords.refusal({ ...verified.refusal }));
    return undefined;
  }

  async function readCode(text: string): Promise<void> {
    setProblem(undefined);
    const code = await app.readCode(text);
    if (!code.ok) return setProblem(fileWords.refusal({ ...code.refusal }));
    await hold({ ...given, code: code.value });
  }

  async function openFile(picked: File): Promise<void> {
    setProblem(undefined);
    setWorking(fileWords.takeIn.opening);
    const file = await app.lookAtFile(picked, (done, of) =>
      setWorking(fileWords.takeIn.looking(done, of)),
    );
    setWorking(undefined);
    if (!file.ok) return setProblem(fileWords.refusal({ ...file.refusal }));
    await hold({ ...given, file: file.value });
  }

  const beginAgain = useCallback(() => {
    setGiven({});
    setFindings(undefined);
    setProblem(undefined);
  }, []);

  return { given, findings, problem, working, readCode, openFile, beginAgain, say: setProblem };
}
