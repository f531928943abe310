/** Every wait has a sign of progress, and every list an empty state. */

import type { ReactNode } from 'react';
import styles from './waiting.module.css';

export function Working({ children }: { readonly children: ReactNode }) {
  return (
    <p className={styles.working} role="status">
      {children}
    </p>
  );
}

export function Empty({
  children,
  action,
}: {
  readonly children: ReactNode;
  readonly action?: ReactNode;
}) {
  return (
    <div className={styles.empty}>
      <p>{children}</p>
      {action}
    </div>
  );
}
