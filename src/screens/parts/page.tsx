/** A place: its header, its content, and optionally the bar at the bottom. */

import type { ReactNode } from 'react';
import styles from './page.module.css';

export interface PageProps {
  readonly title: string;
  /** What stands beside the title: the one button of the page, a count. */
  readonly beside?: ReactNode;
  readonly children: ReactNode;
  readonly bar?: ReactNode;
}

export function Page({ title, beside, children, bar }: PageProps) {
  return (
    <>
      <main className={styles.main}>
        <div className={styles.head}>
          <h1>{title}</h1>
          {beside !== undefined && <div className={styles.beside}>{beside}</div>}
        </div>
        {children}
      </main>
      {bar}
    </>
  );
}
