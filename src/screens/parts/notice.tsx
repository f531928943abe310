/** Says what is wrong or worth knowing, and what to do about it. */

import type { ReactNode } from 'react';
import { classes } from './classes';
import styles from './notice.module.css';

export interface NoticeProps {
  readonly children: ReactNode;
  /** `alert` interrupts a screen reader; `status` waits its turn; `caution` is part of the page. */
  readonly as?: 'alert' | 'status' | 'caution';
  readonly actions?: ReactNode;
}

export function Notice({ children, as = 'caution', actions }: NoticeProps) {
  return (
    <div
      className={classes(styles.notice, as !== 'status' && styles.call)}
      role={as === 'caution' ? undefined : as}
    >
      <div className={styles.text}>{children}</div>
      {actions !== undefined && <div className={styles.actions}>{actions}</div>}
    </div>
  );
}
