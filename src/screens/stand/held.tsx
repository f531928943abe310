/** A job that waits: for what, and the one action that takes it up again. */

import { words } from '../../words';
import { useNames } from '../app-context';
import { ActionBar, Page } from '../parts';
import type { ShownJob } from '../use-job';

export function Held({ shown }: { readonly shown: ShownJob }) {
  const { store, open } = shown;
  const { hold } = open.state;
  const names = useNames(open.state.plan);
  if (hold === undefined) return null;
  return (
    <Page
      title={words.stand.heldTitle}
      bar={
        <ActionBar
          action={{
            label: words.stand.resume,
            detail: words.stand.resumeDetail,
            busy: open.busy,
            onPress: () => void store.act({ kind: 'resume-job' }),
          }}
        />
      }
    >
      <p>
        {words.waiting({ code: 'waits-on-hold', for: hold.for, note: hold.note })} ·{' '}
        {names.person(hold.by)}, {words.day(hold.at.claimed)} {words.time(hold.at.claimed)}
      </p>
    </Page>
  );
}
