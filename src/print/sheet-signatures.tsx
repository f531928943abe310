/** Who stands for the bike: each signature over its line, what it means and when it was made under it. */

import type { Sheet, SheetSignature } from '../engine/sheet';
import { words } from '../words';
import styles from './sheet-page.module.css';

interface SheetSignaturesProps {
  readonly sheet: Sheet;
  /** The customer's drawn signature, as an address of an image. */
  readonly drawn?: string | undefined;
}

export function SheetSignatures({ sheet, drawn }: SheetSignaturesProps) {
  return (
    <div className={styles.signatures}>
      {sheet.signatures.map((signature) => (
        <div key={signature.meaning} className={styles.signature}>
          {signature.meaning === 'received' ? (
            <Received signature={signature} drawn={drawn} />
          ) : (
            <Typed signature={signature} />
          )}
        </div>
      ))}
    </div>
  );
}

function Typed({ signature: { meaning, name, at } }: { readonly signature: SheetSignature }) {
  return (
    <>
      <p className={styles.over}>
        <span className={styles.typed}>{name}</span>
      </p>
      <p className={styles.line}>
        {words.sheet.signatures[meaning]}, {words.sheet.electronically}
        <br />
        {whenText(at.claimed)}
      </p>
    </>
  );
}

function Received({
  signature: { meaning, name, from, at },
  drawn,
}: {
  readonly signature: SheetSignature;
  readonly drawn: string | undefined;
}) {
  const text = words.sheet;
  return (
    <>
      <p className={styles.over}>
        {drawn !== undefined && (
          <img src={drawn} alt={words.handOver.drawn} className={styles.drawn} />
        )}
      </p>
      <p className={styles.line}>
        <strong>{name ?? text.erased}</strong>, {text.signatures[meaning]}
        {from !== undefined && ` ${text.from(from)}`}
        <br />
        {whenText(at.claimed)}
      </p>
    </>
  );
}

function whenText(claimed: string): string {
  return `${words.date(claimed)} ${words.time(claimed)}`;
}
