/** What the wrench showed, bolt by bolt, and what each reading is worth; nothing at all while no wrench types. */

import { jointWords } from '../../words/joint';
import { Button, Notice } from '../parts';
import styles from './joint-aside.module.css';
import type { ReadingRow, Readings } from './use-readings';

export function ReadingNote({ readings }: { readonly readings: Readings }) {
  const { rows, next, unused, isRising, again, takeBack } = readings;
  const text = jointWords.reading;
  if (rows.length === 0 && unused === undefined) return null;
  return (
    <section className={styles.readings} aria-label={text.title}>
      {unused !== undefined && (
        <Notice as="alert">
          <p>
            {unused.because === 'surplus' ? text.surplus(unused.text) : text.notRead(unused.text)}
          </p>
        </Notice>
      )}
      <div className={styles.rows}>
        {rows.map((row) => {
          const judged = judgedText(row, isRising);
          return (
            <Button
              key={row.bolt}
              label={text.again(row.turn, row.text, judged)}
              onPress={() => again(row.bolt)}
            >
              <span className={styles.read}>
                <span>{text.row(row.turn, row.text)}</span>
                <span className={row.judged === 'outside' ? undefined : styles.judged}>
                  {judged}
                </span>
              </span>
            </Button>
          );
        })}
      </div>
      <div className={styles.told}>
        <p role="status">
          {next === undefined
            ? text.all
            : next.isWrong
              ? text.bringRight(next.turn)
              : text.next(next.turn)}
        </p>
        {rows.length > 0 && (
          <Button tone="quiet" onPress={takeBack}>
            {text.takeBack}
          </Button>
        )}
      </div>
    </section>
  );
}

function judgedText({ judged, inside }: ReadingRow, isRising: boolean): string {
  const text = jointWords.reading;
  if (isRising && judged === 'outside') return text.risenTooFar;
  if (isRising && judged === 'inside') return text.rising;
  if (judged === 'undecided') return text.undecided(inside);
  return judged === 'inside' ? text.inside : text.outside;
}
