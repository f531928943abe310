/** Several things picked from a long list, each of which can be left out again. */

import { catalogueWords } from '../../words/catalogue';
import { Button, Pick } from '../parts';
import styles from './catalogue.module.css';

export interface ListFieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly ids: readonly string[];
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly nameOf: (id: string) => string;
  readonly onChange: (ids: readonly string[]) => void;
}

export function ListField({ label, hint, ids, options, nameOf, onChange }: ListFieldProps) {
  return (
    <div className={styles.section}>
      <Pick
        label={label}
        hint={hint}
        value=""
        prompt={catalogueWords.form.choose}
        options={options.filter(({ value }) => !ids.includes(value))}
        onChange={(id) => onChange([...ids, id])}
      />
      {ids.map((id) => (
        <div key={id} className={styles.picked}>
          <span>{nameOf(id)}</span>
          <Button
            tone="quiet"
            label={catalogueWords.form.remove(nameOf(id))}
            onPress={() => onChange(ids.filter((other) => other !== id))}
          >
            ×
          </Button>
        </div>
      ))}
    </div>
  );
}
