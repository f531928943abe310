/** The rack: every boxed and open job, by the day somebody wants it, with its state and what it waits for. */

import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from 'zustand';
import { filterRows, type JobRow } from '../../state';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, classes, Empty, Page, TextField, Working } from '../parts';
import { routes } from '../routes';
import styles from './rack.module.css';

export function Rack() {
  const app = useApp();
  const [, go] = useLocation();
  const { rows, loaded } = useStore(app.rack);
  const [text, setText] = useState('');
  const open = rows.filter(({ status }) => status !== 'handed-over');
  const shown = filterRows(open, { text });
  const today = app.clock.today();
  const takeIn = (
    <Button tone="solid" onPress={() => go(routes.goodsIn)}>
      {words.rack.takeIn}
    </Button>
  );
  return (
    <Page title={words.rack.title} beside={takeIn}>
      <TextField label={words.rack.search} type="search" value={text} onChange={setText} />
      {!loaded && <Working>{words.app.opening}</Working>}
      {loaded && open.length === 0 && <Empty action={takeIn}>{words.rack.empty}</Empty>}
      {loaded && rows.length === 0 && (
        <p className={styles.gone}>
          <Link href={routes.takeIn}>{words.rack.restore}</Link>
        </p>
      )}
      {loaded && open.length > 0 && shown.length === 0 && <Empty>{words.rack.noneFound}</Empty>}
      {groupsOf(shown, today).map(({ heading, jobs }) => (
        <section key={heading} className={styles.group}>
          <h2>{heading}</h2>
          <ul className={styles.rows}>
            {jobs.map((row) => (
              <RackRow key={row.job} row={row} />
            ))}
          </ul>
        </section>
      ))}
      {loaded && rows.length > open.length && (
        <p className={styles.gone}>
          <Link href={routes.records}>{words.rack.recentlyGone}</Link>
        </p>
      )}
    </Page>
  );
}

function RackRow({ row }: { readonly row: JobRow }) {
  const { make, model, colour, size, frameNumber, status, due, waiting } = row;
  return (
    <li>
      <Link href={placeOf(row)} className={styles.row}>
        <span className={styles.due}>{due === undefined ? '' : words.time(due)}</span>
        <span className={styles.bike}>
          <strong>
            {make} {model}
          </strong>
          <span className={styles.soft}>
            {[frameNumber, colour, size].filter(Boolean).join(' · ')}
          </span>
        </span>
        <span className={classes(styles.state, status === 'on-hold' && styles.held)}>
          {words.terms.statusNames[status]}
        </span>
        <span className={styles.waits}>
          {waiting[0] === undefined ? progressOf(row) : words.waiting(waiting[0])}
          {waiting.length > 1 && ` ${words.rack.more(waiting.length - 1)}`}
        </span>
      </Link>
    </li>
  );
}

/** Where the next thing to do for this job is done. */
function placeOf({ job, status, steps, points }: JobRow): string {
  if (status === 'to-be-checked') return routes.check(job);
  if (status === 'ready') return routes.handOver(job);
  if (status === 'on-the-stand' && steps.of > 0 && steps.done === steps.of)
    return points.done === points.of ? routes.check(job) : routes.walk(job);
  return routes.stand(job);
}

function progressOf({ status, steps, points }: JobRow): string {
  if (status !== 'on-the-stand') return '';
  return steps.done < steps.of
    ? words.rack.steps(steps.done, steps.of)
    : words.rack.points(points.done, points.of);
}

function groupsOf(rows: readonly JobRow[], today: string) {
  const tomorrow = nextDay(today);
  const groups = new Map<string, JobRow[]>();
  for (const row of rows) {
    const heading = headingFor(row.due?.slice(0, 10), today, tomorrow);
    groups.set(heading, [...(groups.get(heading) ?? []), row]);
  }
  return [...groups].map(([heading, jobs]) => ({ heading, jobs }));
}

function headingFor(day: string | undefined, today: string, tomorrow: string): string {
  if (day === undefined) return words.rack.noPromise;
  if (day < today) return words.rack.overdue;
  if (day === today) return words.rack.today;
  return day === tomorrow ? words.rack.tomorrow : words.day(day);
}

function nextDay(date: string): string {
  const day = new Date(`${date}T12:00:00Z`);
  day.setUTCDate(day.getUTCDate() + 1);
  return day.toISOString().slice(0, 10);
}
