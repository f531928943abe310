/** What a file holds, record by record: refused ones first, with the reason, then how each stands to what is held here. */

import type { FileLooked } from '../../state';
import { fileWords } from '../../words/file-words';
import styles from './shop.module.css';

/** A whole shop would be a long page; the rest is counted. */
const shownAtMost = 60;

export function LookedList({ looked: { good, refused } }: { readonly looked: FileLooked }) {
  const news = [...good].sort((a, b) => b.added - a.added);
  return (
    <>
      {refused.length > 0 && (
        <section>
          <h2>{fileWords.takeIn.bad(refused.length)}</h2>
          <ul className={styles.people}>
            {refused.slice(0, shownAtMost).map(({ job, refusal }) => (
              <li key={job} className={styles.found}>
                <span>{fileWords.refusal({ ...refusal })}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{fileWords.takeIn.good(good.length)}</h2>
        <ul className={styles.people}>
          {news.slice(0, shownAtMost).map(({ job, frameNumber, make, model, standing, added }) => (
            <li key={job} className={styles.found}>
              <strong>{frameNumber}</strong>
              <span>
                {make} {model}
              </span>
              <span>{fileWords.takeIn.standing[standing](added)}</span>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
