/** Every version with its author, date and reason; taking one back; and files out and in. */

import { useState } from 'react';
import { Link } from 'wouter';
import { type CatalogueVersion, countingVersions } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { useApp } from '../app-context';
import { Button, Empty, Notice, Page } from '../parts';
import { routes } from '../routes';
import styles from './catalogue.module.css';
import { ChangeDialog } from './change-dialog';
import { TakeIn } from './take-in';
import type { ShownCatalogue } from './use-catalogue';
import { VersionText } from './version-text';

export interface HistoryProps {
  readonly shown: ShownCatalogue;
  readonly isSupervisor: boolean;
}

export function History({ shown, isSupervisor }: HistoryProps) {
  const app = useApp();
  const text = catalogueWords.history;
  const [said, say] = useState<string>();
  const [takingBack, takeBack] = useState<CatalogueVersion>();
  const counting = new Set(countingVersions(shown.versions).map(({ id }) => id));
  const save = async () => {
    const saved = await app.saveCatalogueFile();
    say(saved.ok ? text.saved : words.refusal({ ...saved.refusal }));
  };
  return (
    <Page
      title={text.title}
      beside={
        <Link className={styles.link} href={routes.catalogue}>
          {catalogueWords.back}
        </Link>
      }
    >
      {shown.fault !== undefined && (
        <Notice as="alert">
          <p>{shown.fault}</p>
        </Notice>
      )}
      {said !== undefined && (
        <Notice as="status">
          <p>{said}</p>
        </Notice>
      )}
      {shown.versions.length === 0 && <Empty>{text.none}</Empty>}
      <ol className={styles.rows} reversed>
        {[...shown.versions].reverse().map((version) => (
          <li key={version.id} className={styles.version}>
            <VersionText version={version} shown={shown} />
            {!counting.has(version.id) && <p className={styles.bold}>{text.takenBack}</p>}
            {isSupervisor && counting.has(version.id) && (
              <div>
                <Button onPress={() => takeBack(version)}>{text.takeBack}</Button>
              </div>
            )}
          </li>
        ))}
      </ol>
      <section className={styles.section}>
        <h2>{text.files}</h2>
        <p>{text.filesText}</p>
        <div className={styles.buttons}>
          <Button onPress={() => void save()}>{text.save}</Button>
        </div>
        {isSupervisor && <TakeIn shown={shown} onTaken={(count) => say(text.takenIn(count))} />}
      </section>
      {takingBack !== undefined && (
        <ChangeDialog
          shown={shown}
          title={text.takeBackTitle(takingBack.version)}
          changes={() => [{ kind: 'take-back', version: takingBack.id }]}
          onClose={() => takeBack(undefined)}
          onKept={(number) => {
            takeBack(undefined);
            say(catalogueWords.form.kept(number));
          }}
        >
          <p>{text.takeBackText}</p>
        </ChangeDialog>
      )}
    </Page>
  );
}
