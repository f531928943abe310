/** Labelled fields: text, dates, choices from a short list. Errors stand under the field and say what to do. */

import { type ReactNode, useId } from 'react';
import styles from './field.module.css';

interface FieldProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly error?: ReactNode;
}

export interface TextFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly type?: 'text' | 'date' | 'datetime-local' | 'search' | 'tel' | 'email';
  readonly inputMode?: 'text' | 'none' | 'numeric' | 'decimal';
  readonly autoCapitalize?: 'characters' | 'sentences' | 'words' | 'off';
  readonly autoComplete?: string;
  readonly lines?: number;
  readonly required?: boolean;
  readonly maxLength?: number;
}

export function TextField({
  label,
  hint,
  error,
  value,
  onChange,
  type = 'text',
  lines = 1,
  autoComplete = 'off',
  ...rest
}: TextFieldProps) {
  const id = useId();
  const described = describedBy(id, hint, error);
  const shared = {
    id,
    value,
    className: styles.input,
    autoComplete,
    'aria-describedby': described,
    'aria-invalid': error === undefined ? undefined : true,
    ...rest,
  };
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      {lines > 1 ? (
        <textarea {...shared} rows={lines} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input {...shared} type={type} onChange={(event) => onChange(event.target.value)} />
      )}
      <Under id={id} hint={hint} error={error} />
    </div>
  );
}

export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly detail?: string;
}

export interface ChoiceProps<Value extends string> extends FieldProps {
  readonly options: readonly Option<Value>[];
  readonly value: Value | undefined;
  readonly onChange: (value: Value) => void;
  readonly columns?: 'auto' | 'one';
}

/** A few large answers, one of which holds. */
export function Choice<Value extends string>({
  label,
  hint,
  error,
  options,
  value,
  onChange,
  columns = 'auto',
}: ChoiceProps<Value>) {
  const id = useId();
  return (
    <fieldset className={styles.field} aria-describedby={describedBy(id, hint, error)}>
      <legend className={styles.label}>{label}</legend>
      <div className={columns === 'one' ? styles.choicesInOne : styles.choices}>
        {options.map((option) => (
          <label key={option.value} className={styles.choice}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span className={styles.choiceText}>
              {option.label}
              {option.detail !== undefined && (
                <span className={styles.choiceDetail}>{option.detail}</span>
              )}
            </span>
          </label>
        ))}
      </div>
      <Under id={id} hint={hint} error={error} />
    </fieldset>
  );
}

export interface ChecksProps<Value extends string> extends FieldProps {
  readonly options: readonly Option<Value>[];
  readonly values: readonly Value[];
  readonly onChange: (values: readonly Value[]) => void;
}

/** Several answers that may hold together. */
export function Checks<Value extends string>({
  label,
  hint,
  error,
  options,
  values,
  onChange,
}: ChecksProps<Value>) {
  const id = useId();
  return (
    <fieldset className={styles.field} aria-describedby={describedBy(id, hint, error)}>
      <legend className={styles.label}>{label}</legend>
      <div className={styles.choices}>
        {options.map((option) => (
          <label key={option.value} className={styles.choice}>
            <input
              type="checkbox"
              checked={values.includes(option.value)}
              onChange={(event) =>
                onChange(
                  event.target.checked
                    ? [...values, option.value]
                    : values.filter((other) => other !== option.value),
                )
              }
            />
            <span className={styles.choiceText}>{option.label}</span>
          </label>
        ))}
      </div>
      <Under id={id} hint={hint} error={error} />
    </fieldset>
  );
}

export interface PickProps<Value extends string> extends FieldProps {
  readonly options: readonly Option<Value>[];
  readonly value: Value | '';
  readonly onChange: (value: Value) => void;
  /** Shown while nothing is picked. */
  readonly prompt?: string;
}

/** One answer from a longer list: the browser's own picker. */
export function Pick<Value extends string>({
  label,
  hint,
  error,
  options,
  value,
  onChange,
  prompt,
}: PickProps<Value>) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className={styles.input}
        value={value}
        aria-describedby={describedBy(id, hint, error)}
        aria-invalid={error === undefined ? undefined : true}
        onChange={(event) => onChange(event.target.value as Value)} // the options are the values
      >
        {prompt !== undefined && (
          <option value="" disabled>
            {prompt}
          </option>
        )}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      <Under id={id} hint={hint} error={error} />
    </div>
  );
}

function describedBy(id: string, hint: ReactNode, error: ReactNode): string | undefined {
  const parts = [hint !== undefined && `${id}-hint`, error !== undefined && `${id}-error`];
  return parts.filter(Boolean).join(' ') || undefined;
}

function Under({ id, hint, error }: { id: string; hint?: ReactNode; error?: ReactNode }) {
  return (
    <>
      {hint !== undefined && (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      )}
      {error !== undefined && (
        <p id={`${id}-error`} className={styles.error} role="alert">
          {error}
        </p>
      )}
    </>
  );
}
