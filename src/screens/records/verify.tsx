/** Verify a record: by the code of its sheet or a day's page, or by its file, without a network. */

import { useEffect, useRef, useState } from 'react';
import type { PrintedCode } from '../../state';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, FilePicker, Notice, Page, Problem, TextField, Working } from '../parts';
import styles from './records.module.css';
import { useVerifying } from './use-verifying';
import type { Findings } from './verify-findings';

export function Verify() {
  const app = useApp();
  const [text, setText] = useState('');
  const { given, findings, problem, working, readCode, openFile, beginAgain, say } = useVerifying();
  const scanned = useRef(readCode);
  scanned.current = readCode;
  useEffect(() => app.onCode((code) => void scanned.current(code)), [app]);
  const { scanPicture } = app;

  async function readPicture(picked: File): Promise<void> {
    const codes = await picturesCodes(picked, scanPicture);
    const [code] = codes;
    if (code === undefined) return say(fileWords.verify.noCode);
    setText(code);
    await readCode(code);
  }

  return (
    <Page title={fileWords.verify.title}>
      <div className={styles.verify}>
        <p>{fileWords.verify.text}</p>
        <TextField
          label={fileWords.verify.code}
          hint={fileWords.verify.codeHint}
          value={text}
          onChange={setText}
          lines={3}
          maxLength={4000}
          autoCapitalize="off"
        />
        <div className={styles.buttons}>
          <Button tone="solid" busy={working !== undefined} onPress={() => void readCode(text)}>
            {fileWords.verify.check}
          </Button>
          {scanPicture !== undefined && (
            <FilePicker accept="image/*" onPick={(file) => void readPicture(file)}>
              {fileWords.verify.picture}
            </FilePicker>
          )}
          <FilePicker
            accept=".zip,application/zip"
            busy={working !== undefined}
            onPick={(file) => void openFile(file)}
          >
            {fileWords.verify.file}
          </FilePicker>
          {(given.code !== undefined || given.file !== undefined) && (
            <Button
              onPress={() => {
                setText('');
                beginAgain();
              }}
            >
              {fileWords.verify.another}
            </Button>
          )}
        </div>
        {working !== undefined && <Working>{working}</Working>}
        <Problem>{problem}</Problem>
        {given.code !== undefined && <p>{saidBy(given.code)}</p>}
        {findings !== undefined && <Shown findings={findings} />}
      </div>
    </Page>
  );
}

function Shown({ findings: { isGood, title, text, checked, unchecked } }: { findings: Findings }) {
  return (
    <>
      <Notice as={isGood ? 'status' : 'alert'}>
        <p>
          <strong>{title}</strong> {text}
        </p>
      </Notice>
      <List title={fileWords.verify.checked} items={checked} />
      <List title={fileWords.verify.unchecked} items={unchecked} />
    </>
  );
}

function List({ title, items }: { readonly title: string; readonly items: readonly string[] }) {
  if (items.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul className={styles.findings}>
        {items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </section>
  );
}

function saidBy(code: PrintedCode): string {
  return code.kind === 'sheet'
    ? fileWords.verify.sheetSays(code.frame, words.date(code.on))
    : fileWords.verify.daySays(code.shop, code.count, words.date(code.on));
}

async function picturesCodes(
  picked: File,
  scan: ((picture: ImageBitmapSource) => Promise<readonly string[]>) | undefined,
): Promise<readonly string[]> {
  try {
    return (await scan?.(await createImageBitmap(picked))) ?? [];
  } catch {
    return [];
  }
}
