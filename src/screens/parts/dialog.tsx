/** Asks one thing on top of the screen. The browser's own dialog keeps focus, Escape and what is behind it. */

import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './button';
import styles from './dialog.module.css';

export interface DialogProps {
  readonly title: string;
  readonly closeLabel: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** The buttons that answer, beside the one that closes. */
  readonly actions?: ReactNode;
  readonly wide?: boolean;
}

export function Dialog({
  title,
  closeLabel,
  onClose,
  children,
  actions,
  wide = false,
}: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const element = dialog.current;
    if (element !== null && !element.open) element.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={wide ? styles.wide : styles.dialog}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <h2 id={heading} className={styles.title}>
        {title}
      </h2>
      <div className={styles.body}>{children}</div>
      <div className={styles.actions}>
        <Button onPress={onClose}>{closeLabel}</Button>
        {actions}
      </div>
    </dialog>
  );
}
