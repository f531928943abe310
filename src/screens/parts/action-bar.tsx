/** The bar at the bottom: what steps aside on the left, and the one action on the right two thirds. */

import type { ReactNode } from 'react';
import styles from './action-bar.module.css';

export interface BarAction {
  readonly label: string;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

export interface ActionBarProps {
  readonly aside?: readonly BarAction[];
  readonly action?:
    | (BarAction & { readonly detail?: ReactNode; readonly busy?: boolean })
    | undefined;
  /** Shown in place of the action when there is none: why not. */
  readonly children?: ReactNode;
}

export function ActionBar({ aside = [], action, children }: ActionBarProps) {
  return (
    <footer className={styles.bar}>
      {aside.length > 0 && (
        <div className={styles.aside}>
          {aside.map(({ label, disabled, onPress }) => (
            <button
              key={label}
              type="button"
              className={styles.other}
              disabled={disabled}
              onClick={onPress}
            >
              {label}
            </button>
          ))}
        </div>
      )}
      {action === undefined ? (
        <div className={styles.instead}>{children}</div>
      ) : (
        <button
          type="button"
          className={styles.action}
          disabled={action.disabled}
          aria-busy={action.busy || undefined}
          onClick={action.busy ? undefined : action.onPress}
        >
          <span className={styles.label}>{action.label}</span>
          {action.detail !== undefined && ' '}
          {action.detail !== undefined && <span className={styles.detail}>{action.detail}</span>}
        </button>
      )}
    </footer>
  );
}
