/** Six digits on the big pad: how many are typed is shown, which ones is not. */

import { NumberPad } from './number-pad';
import styles from './pin-pad.module.css';

export const pinLength = 6;

export interface PinPadProps {
  readonly label: string;
  /** Whether the label is read above the digits, or only by a screen reader. */
  readonly isLabelled?: boolean;
  readonly value: string;
  readonly onChange: (pin: string) => void;
  readonly eraseLabel: string;
}

export function PinPad({ label, isLabelled = false, value, onChange, eraseLabel }: PinPadProps) {
  return (
    <>
      {isLabelled && <p>{label}</p>}
      <p className={styles.pin} aria-live="polite">
        {'●'.repeat(value.length)}
        <span className={styles.left}>{'○'.repeat(pinLength - value.length)}</span>
      </p>
      <NumberPad
        label={label}
        value={value}
        onChange={onChange}
        eraseLabel={eraseLabel}
        maxLength={pinLength}
      />
    </>
  );
}
