/** What the customer has to know about this bike: what was let go first and apart, then the worst first. */

import { findingsInOrder, type Sheet, type SheetFinding } from '../engine/sheet';
import { words } from '../words';
import styles from './sheet-page.module.css';
import { withoutStop } from './without-stop';

export function SheetFindings({ sheet }: { readonly sheet: Sheet }) {
  const text = words.sheet;
  const { letGo, others } = findingsInOrder(sheet.findings);
  if (letGo.length + others.length === 0 && !sheet.hasDisc) return null;
  return (
    <>
      <h2>{text.findings}</h2>
      {letGo.length > 0 && (
        <ul className={styles.letGo} aria-label={text.letGo}>
          {letGo.map((finding) => (
            <FindingItem key={finding.text} finding={finding} />
          ))}
        </ul>
      )}
      <ul>
        {others.map((finding) => (
          <FindingItem key={finding.text} finding={finding} />
        ))}
        {sheet.hasDisc && <li>{text.bedding}</li>}
      </ul>
    </>
  );
}

function FindingItem({ finding }: { readonly finding: SheetFinding }) {
  return (
    <li>
      <strong>{words.terms.severities[finding.severity]}:</strong>{' '}
      {words.writing.heldTogether(findingText(finding))}
    </li>
  );
}

function findingText({ text, closed, allowed }: SheetFinding): string {
  const found = withoutStop(text);
  if (closed !== undefined) return words.sheet.closed(found, closed);
  if (allowed !== undefined) return words.sheet.allowed(found, allowed.by, allowed.reason);
  return text;
}
