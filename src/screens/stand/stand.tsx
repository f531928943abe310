/** The stand: one question, what now? */

import { statusOf, uncheckedContents, whatNow } from '../../engine/job';
import { words } from '../../words';
import { JobFrame } from '../job-frame';
import { JobHead } from '../job-head';
import type { ShownJob } from '../use-job';
import { BuildView } from './build-view';
import { Contents } from './contents';
import { Held } from './held';
import { Opening } from './opening';

export function Stand({ job }: { readonly job: string }) {
  return (
    <JobFrame job={job}>
      {(shown) => (
        <>
          <JobHead state={shown.open.state} />
          <StandOf shown={shown} />
        </>
      )}
    </JobFrame>
  );
}

function StandOf({ shown }: { readonly shown: ShownJob }) {
  const { state } = shown.open;
  const status = statusOf(state);
  if (status === 'boxed') return <Opening shown={shown} />;
  if (status === 'on-hold') return <Held shown={shown} />;
  if (whatNow(state).what === 'contents' && uncheckedContents(state).length > 0)
    return <Contents shown={shown} title={words.contents.title} />;
  return <BuildView shown={shown} />;
}
