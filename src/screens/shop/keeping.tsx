/** Where the book is kept, and whether the browser promised to keep it. */

import { useStore } from 'zustand';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button } from '../parts';
import { sizeText } from '../size-text';
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
  return (
    <section className={styles.keeping}>
      <h2>{words.shop.keeping}</h2>
      <p>{words.shop.keepingText}</p>
      <p>
        {answers[answer]}{' '}
        {used !== undefined &&
          allowed !== undefined &&
          words.shop.used(sizeText(used), sizeText(allowed))}
      </p>
      <div className={styles.buttons}>
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
