/** What was found on the bike, as the customer will read it: what was let go first and apart, then the worst first. */

import type { Finding, JobState } from '../../engine/job';
import { findingsInOrder } from '../../engine/sheet';
import { words } from '../../words';
import { useNames } from '../app-context';
import { Notice } from '../parts';
import styles from './hand-over.module.css';

export function FoundOnBike({ state }: { readonly state: JobState }) {
  const names = useNames(state.plan);
  const { letGo, others } = findingsInOrder(state.findings);
  if (letGo.length + others.length === 0) return null;
  const items = (findings: readonly Finding[]) =>
    findings.map(({ id, severity, text, closed, allowed }) => (
      <li key={id}>
        <strong>{words.terms.severities[severity]}:</strong> {text}
        {closed !== undefined && ` (${words.walk.closedHow(closed.how)})`}
        {closed === undefined &&
          allowed !== undefined &&
          ` (${words.letGo(allowed.reason, names.person(allowed.by))})`}
      </li>
    ));
  return (
    <section className={styles.found}>
      <h2>{words.handOver.findings}</h2>
      {letGo.length > 0 && (
        <Notice>
          <p>{words.handOver.letGo}</p>
          <ul>{items(letGo)}</ul>
        </Notice>
      )}
      {others.length > 0 && <ul>{items(others)}</ul>}
    </section>
  );
}
