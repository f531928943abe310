/** The day's page: one digest over every record, to print and keep where nobody can change it. */

import { useEffect, useState } from 'react';
import { recordCode } from '../../engine/job';
import { Qr } from '../../print';
import type { DayPage as Day } from '../../state';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, Problem, Working } from '../parts';
import styles from './day-page.module.css';

export function DayPage() {
  const app = useApp();
  const [day, setDay] = useState<Day>();
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    void app.dayPage().then((made) => {
      if (made.ok) setDay(made.value);
      else setProblem(fileWords.refusal({ ...made.refusal }));
    });
  }, [app]);
  return (
    <main className={styles.page}>
      <div className={styles.tools} data-on-screen-only>
        <p>{fileWords.dayPage.text}</p>
        {day !== undefined && (
          <Button
            tone="solid"
            onPress={() => app.printSheet(`${fileWords.dayPage.title} ${day.on}`)}
          >
            {fileWords.dayPage.print}
          </Button>
        )}
      </div>
      <Problem>{problem}</Problem>
      {day === undefined && problem === undefined && <Working>{fileWords.verify.checking}</Working>}
      {day !== undefined && <Printed day={day} />}
    </main>
  );
}

function Printed({ day: { shop, on, at, root, count, touched, code } }: { readonly day: Day }) {
  return (
    <article className={styles.sheet}>
      <h1>
        {fileWords.dayPage.title} · {words.date(on)}
      </h1>
      <p>{shop}</p>
      {code !== undefined && (
        <div className={styles.code}>
          <Qr text={code} title={fileWords.dayPage.code} />
        </div>
      )}
      <h2>{fileWords.dayPage.digest}</h2>
      <p className={styles.digest}>{grouped(root)}</p>
      <p>{fileWords.dayPage.over(count, words.time(at))}</p>
      <h2>{fileWords.dayPage.worked}</h2>
      {touched.length === 0 && <p>{fileWords.dayPage.none}</p>}
      {touched.length > 0 && <Touched rows={touched} />}
      <p className={styles.how}>{fileWords.dayPage.how}</p>
      <p className={styles.signed}>{fileWords.dayPage.signed}</p>
    </article>
  );
}

function Touched({ rows }: { readonly rows: Day['touched'] }) {
  return (
    <table>
      <thead>
        <tr>
          <th>{fileWords.dayPage.frame}</th>
          <th>{fileWords.dayPage.bike}</th>
          <th>{fileWords.dayPage.record}</th>
          <th>{fileWords.dayPage.state}</th>
          <th>{fileWords.dayPage.end}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ job, frameNumber, make, model, status, heads }) => (
          <tr key={job}>
            <td>{frameNumber}</td>
            <td>
              {make} {model}
            </td>
            <td>{recordCode(job)}</td>
            <td>{words.terms.statusNames[status]}</td>
            <td>{heads.map((head) => head.slice(0, 12)).join(' ')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** In fours, so that two people can compare it aloud. */
function grouped(digest: string): string {
  return digest.match(/.{4}/g)?.join(' ') ?? digest;
}
