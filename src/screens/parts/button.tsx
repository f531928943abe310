/** A button says what it records. Solid moves the work on; plain is everything else. */

import type { ReactNode } from 'react';
import styles from './button.module.css';
import { classes } from './classes';

export interface ButtonProps {
  readonly children: ReactNode;
  /** Said softly behind the label: what comes next. */
  readonly detail?: ReactNode;
  readonly tone?: 'solid' | 'plain' | 'quiet';
  readonly wide?: boolean;
  readonly busy?: boolean;
  readonly disabled?: boolean;
  readonly pressed?: boolean;
  readonly type?: 'button' | 'submit';
  readonly label?: string;
  readonly onPress?: () => void;
}

export function Button({
  children,
  detail,
  tone = 'plain',
  wide = false,
  busy = false,
  disabled = false,
  pressed,
  type = 'button',
  label,
  onPress,
}: ButtonProps) {
  return (
    <button
      type={type}
      className={classes(styles.button, styles[tone], wide && styles.wide)}
      disabled={disabled}
      aria-busy={busy || undefined}
      aria-pressed={pressed}
      aria-label={label}
      // A second tap while the first is on its way to the disk asks for nothing.
      onClick={busy ? undefined : onPress}
    >
      <span className={styles.label}>{children}</span>
      {detail !== undefined && ' '}
      {detail !== undefined && <span className={styles.detail}>{detail}</span>}
    </button>
  );
}
