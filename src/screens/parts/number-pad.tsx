/** A large pad for numbers and markings: nothing at the stand needs the keyboard for them. */

import type { ReactNode } from 'react';
import styles from './number-pad.module.css';

export interface NumberPadProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Keys beside the digits, for example `–`, `max `, ` N·m`; each types itself. */
  readonly extraKeys?: readonly string[];
  /** The key for the decimal point; absent for whole numbers. */
  readonly point?: string;
  readonly eraseLabel: string;
  readonly maxLength?: number;
  /** What stands beside the digits, under the other keys. */
  readonly children?: ReactNode;
}

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

export function NumberPad({
  label,
  value,
  onChange,
  extraKeys = [],
  point,
  eraseLabel,
  maxLength = 24,
  children,
}: NumberPadProps) {
  const type = (text: string) => {
    if (value.length + text.length <= maxLength) onChange(value + text);
  };
  return (
    <fieldset className={styles.pad}>
      <legend className="visually-hidden">{label}</legend>
      <div className={styles.digits}>
        {digits.map((digit) => (
          <Key key={digit} label={digit} onPress={() => type(digit)} />
        ))}
        {point === undefined ? <span /> : <Key label={point} onPress={() => type(point)} />}
        <Key label="0" onPress={() => type('0')} />
        <Key label="⌫" name={eraseLabel} onPress={() => onChange(value.slice(0, -1))} />
      </div>
      {(extraKeys.length > 0 || children !== undefined) && (
        <div className={styles.beside}>
          {extraKeys.length > 0 && (
            <div className={styles.extra}>
              {extraKeys.map((key) => (
                <Key key={key} label={key.trim()} onPress={() => type(key)} />
              ))}
            </div>
          )}
          {children}
        </div>
      )}
    </fieldset>
  );
}

function Key({ label, name, onPress }: { label: string; name?: string; onPress: () => void }) {
  return (
    <button type="button" className={styles.key} aria-label={name} onClick={onPress}>
      {label}
    </button>
  );
}
