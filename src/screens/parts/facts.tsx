/** Labels and what they say, in two columns. */

import type { ReactNode } from 'react';
import styles from './facts.module.css';

export interface FactsProps {
  readonly facts: readonly { readonly label: string; readonly value: ReactNode }[];
}

export function Facts({ facts }: FactsProps) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ label, value }) => (
        <div key={label} className={styles.fact}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
