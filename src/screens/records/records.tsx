/** Records of bikes handed over: found by frame number or record code. */

import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from 'zustand';
import { recordCode } from '../../engine/job';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, Empty, Page, TextField, Working } from '../parts';
import { routes } from '../routes';
import styles from './records.module.css';

export function Records() {
  const { rows, loaded } = useStore(useApp().rack);
  const [, go] = useLocation();
  const [text, setText] = useState('');
  const gone = rows.filter(({ status }) => status === 'handed-over');
  const wanted = plain(text);
  const shown = gone.filter(
    ({ job, frameNumber, make, model }) =>
      plain(frameNumber).includes(wanted) ||
      plain(recordCode(job)).includes(wanted) ||
      plain(make + model).includes(wanted),
  );
  return (
    <Page
      title={words.records.title}
      beside={<Button onPress={() => go(routes.verify)}>{fileWords.verify.link}</Button>}
    >
      <TextField
        label={words.records.search}
        type="search"
        value={text}
        onChange={setText}
        autoCapitalize="characters"
      />
      {!loaded && <Working>{words.app.opening}</Working>}
      {loaded && gone.length === 0 && <Empty>{words.records.empty}</Empty>}
      {gone.length > 0 && shown.length === 0 && <Empty>{words.records.none}</Empty>}
      <ul className={styles.rows}>
        {shown.map(({ job, make, model, frameNumber, handedOverAt = '' }) => (
          <li key={job}>
            <Link href={routes.record(job)} className={styles.row}>
              <strong>{frameNumber}</strong>
              <span>
                {make} {model}
              </span>
              <span>{words.records.handedOver(words.date(handedOverAt))}</span>
              <span>
                {words.records.code} <span className={styles.code}>{recordCode(job)}</span>
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}

/** As people type it: without spaces, hyphens or capitals. */
function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[\s\-./]/g, '');
}
