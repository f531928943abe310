/** Where the book is kept, whether the browser promised to keep it, and how to take a copy. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, Notice } from '../parts';
import styles from './shop.module.css';

const answers = {
  kept: words.shop.kept,
  'may-be-cleared': words.shop.mayClear,
  unknown: words.shop.notAsked,
} as const;

export function Keeping() {
  const app = useApp();
  const { answer, used, allowed } = useStore(app.durability);
  const { offered, installed } = useStore(app.install);
  const [said, say] = useState<string>();
  const copy = async () => {
    say(words.shop.copying);
    const saved = await app.saveBackup('download');
    say(saved.ok ? words.shop.copied : words.refusal({ ...saved.refusal }));
  };
  return (
    <section className={styles.keeping}>
      <h2>{words.shop.keeping}</h2>
      <p>{words.shop.keepingText}</p>
      <p>
        {answers[answer]}{' '}
        {used !== undefined && allowed !== undefined && words.shop.used(size(used), size(allowed))}
      </p>
      {said !== undefined && (
        <Notice as="status">
          <p>{said}</p>
        </Notice>
      )}
      <div className={styles.buttons}>
        <Button onPress={() => void copy()}>{words.shop.copy}</Button>
        {answer !== 'kept' && (
          <Button onPress={() => void app.askToKeep()}>{words.shop.ask}</Button>
        )}
        {offered && !installed && (
          <Button onPress={() => void app.askToInstall()}>{words.shop.install}</Button>
        )}
      </div>
      {installed && <p>{words.shop.installed}</p>}
    </section>
  );
}

function size(bytes: number): string {
  const mega = bytes / 1_000_000;
  return mega >= 1000
    ? `${words.writing.figure(mega / 1000)} GB`
    : `${words.writing.figure(mega)} MB`;
}
