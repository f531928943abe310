/** One version as it is read: who, when, why, and what it changes. */

import type { CatalogueVersion } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import styles from './catalogue.module.css';
import type { ShownCatalogue } from './use-catalogue';

export function VersionText({
  version,
  shown,
}: {
  readonly version: CatalogueVersion;
  readonly shown: ShownCatalogue;
}) {
  const text = catalogueWords.history;
  const numberOf = (id: string) => shown.versions.find((one) => one.id === id)?.version;
  return (
    <>
      <p>
        <span className={styles.bold}>{text.version(version.version)}</span>{' '}
        <span className={styles.soft}>{text.by(version.by, words.time(version.at.claimed))}</span>
      </p>
      <p>{version.reason}</p>
      <ul className={styles.changes}>
        {version.changes.map((change) => (
          <li key={JSON.stringify(change)}>
            {catalogueWords.changeText(change, shown.names, numberOf)}
          </li>
        ))}
      </ul>
    </>
  );
}
