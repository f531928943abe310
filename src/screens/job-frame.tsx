/** What every screen of a job begins with: loading, missing, the write that failed, the change made elsewhere. */

import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import type { OpenJob } from '../state';
import { words } from '../words';
import { useNames } from './app-context';
import styles from './job-frame.module.css';
import { Button, Notice, Page, Working } from './parts';
import { routes } from './routes';
import { type ShownJob, useJob } from './use-job';

export interface JobFrameProps {
  readonly job: string;
  readonly children: (shown: ShownJob) => ReactNode;
}

export function JobFrame({ job, children }: JobFrameProps) {
  const shown = useJob(job);
  if (shown === undefined || shown.open.status === 'loading')
    return (
      <Page title={words.app.opening}>
        <Working>{words.app.opening}</Working>
      </Page>
    );
  if (shown.open.status !== 'ready')
    return (
      <Page title={words.records.notFound}>
        <p>
          <Link href={routes.rack}>{words.app.toRack}</Link>
        </p>
      </Page>
    );
  return (
    <>
      <Problem shown={shown} />
      <ChangedElsewhere times={shown.open.changedElsewhere} />
      {children(shown)}
    </>
  );
}

/** Said once for each change that did not come from this window, until it is read. */
function ChangedElsewhere({ times }: { readonly times: number }) {
  const [read, setRead] = useState(0);
  if (times <= read) return null;
  return (
    <div className={styles.problem}>
      <Notice
        as="status"
        actions={<Button onPress={() => setRead(times)}>{words.app.close}</Button>}
      >
        <p>{words.app.changedElsewhere}</p>
      </Notice>
    </div>
  );
}

/** A tap that did not reach the disk, or was refused: shown and kept until it is tried again or put aside. */
function Problem({ shown }: { readonly shown: ShownJob }) {
  const { store, open } = shown;
  const names = useNames(open.state.plan);
  const { problem } = open;
  if (problem === undefined) return null;
  return (
    <div className={styles.problem}>
      <Notice
        as="alert"
        actions={
          <>
            {isWorthTryingAgain(problem) && (
              <Button onPress={() => void store.retry()}>{words.app.tryAgain}</Button>
            )}
            <Button onPress={() => store.dismiss()}>{words.app.close}</Button>
          </>
        }
      >
        <p>
          <strong>{words.app.notSaved}.</strong> {words.refusal(problem.refusal, names)}
        </p>
      </Notice>
    </div>
  );
}

function isWorthTryingAgain({ refusal }: NonNullable<OpenJob['problem']>): boolean {
  return (
    refusal.code.startsWith('storage-') ||
    refusal.code === 'bug' ||
    refusal.code === 'nobody-at-the-stand'
  );
}
