/** The signatures: the builder's, then the second checker's, who looks at the unusual first or sends back. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import {
  type Gate,
  gatesFor,
  type JobState,
  standingSignature,
  statusOf,
  unusualIn,
} from '../../engine/job';
import type { Person } from '../../state';
import { words } from '../../words';
import { useApp, useHands, useNames } from '../app-context';
import { HandsDialog } from '../hands';
import { JobFrame } from '../job-frame';
import { JobHead } from '../job-head';
import { ActionBar, Facts, Notice, Page } from '../parts';
import { PinDialog } from '../pin-dialog';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { JointTable } from './joint-table';
import styles from './second-check.module.css';
import { SecondEyes } from './second-eyes';
import { SendBackDialog } from './send-back-dialog';
import { ValueTable } from './value-table';

export function SecondCheck({ job }: { readonly job: string }) {
  return (
    <JobFrame job={job}>
      {(shown) => (
        <>
          <JobHead state={shown.open.state} />
          <SignScreen shown={shown} />
        </>
      )}
    </JobFrame>
  );
}

function SignScreen({ shown }: { readonly shown: ShownJob }) {
  const app = useApp();
  const hands = useHands();
  const [, go] = useLocation();
  const { state, job, busy } = shown.open;
  const names = useNames(state.plan);
  const [asking, ask] = useState<'pin' | 'hands' | 'send-back'>();
  const status = statusOf(state);
  const meaning = status === 'to-be-checked' ? 'checked' : 'built';
  const gates = hands === undefined ? [] : signingGates(state, meaning, hands);
  const isChecking = meaning === 'checked';
  if (status === 'ready' || status === 'handed-over')
    return (
      <Page
        title={words.sign.checkedTitle}
        bar={
          <ActionBar
            action={{ label: words.handOver.title, onPress: () => go(routes.handOver(job)) }}
          />
        }
      >
        <Signed state={state} />
        <Unusual state={state} />
        <JointTable state={state} />
        <ValueTable state={state} />
      </Page>
    );
  return (
    <Page
      title={isChecking ? words.sign.checkedTitle : words.sign.builtTitle}
      bar={
        <ActionBar
          aside={[
            ...(isChecking
              ? [{ label: words.sign.sendBack, onPress: () => ask('send-back') }]
              : [{ label: words.walk.toStand, onPress: () => go(routes.stand(job)) }]),
            { label: words.sign.changeHands, onPress: () => ask('hands') },
          ]}
          action={
            hands === undefined || gates.length > 0
              ? undefined
              : {
                  label: isChecking ? words.sign.checkedButton : words.sign.builtButton,
                  detail: hands.name,
                  busy,
                  onPress: () => ask('pin'),
                }
          }
        >
          <p>{words.sign.yet}</p>
        </ActionBar>
      }
    >
      {gates.map((gate) => (
        <Notice key={gate.code}>
          <p>{words.refusal({ ...gate }, names)}</p>
        </Notice>
      ))}
      {isChecking && <Signed state={state} />}
      <SecondEyes job={job} state={state} />
      <Unusual state={state} />
      <JointTable state={state} />
      <ValueTable state={state} />
      {asking === 'hands' && <HandsDialog onClose={() => ask(undefined)} />}
      {asking === 'send-back' && <SendBackDialog shown={shown} onClose={() => ask(undefined)} />}
      {asking === 'pin' && hands !== undefined && (
        <PinDialog
          person={hands}
          means={isChecking ? words.sign.checkedMeans : words.sign.builtMeans}
          onClose={() => ask(undefined)}
          onPin={async (pin) => {
            const signed = await app.sign({ job, meaning, pin });
            return signed.ok ? undefined : words.refusal({ ...signed.refusal }, names);
          }}
        />
      )}
    </Page>
  );
}

/** The gates that stand in this person's way, before they have signed anything. */
function signingGates(
  state: JobState,
  meaning: 'built' | 'checked',
  { id, roles }: Person,
): readonly Gate[] {
  const kind = meaning === 'built' ? 'sign-built' : 'sign-checked';
  const nothing = { claimed: '', zone: '' };
  return gatesFor(state, {
    kind,
    signing: { meaning, heads: [], jws: '' },
    stamp: { by: id, roles, at: nothing, on: '', heads: [] },
  });
}

/** Who stands for the build and for the second check, and since when. */
function Signed({ state }: { readonly state: JobState }) {
  const names = useNames(state.plan);
  return (
    <Facts
      facts={(['built', 'checked'] as const).flatMap((meaning) => {
        const mark = standingSignature(state, meaning);
        if (mark === undefined) return [];
        const when = `${words.day(mark.at.claimed)} ${words.time(mark.at.claimed)}`;
        return [
          { label: words.sign.meanings[meaning], value: `${names.person(mark.by)}, ${when}` },
        ];
      })}
    />
  );
}

function Unusual({ state }: { readonly state: JobState }) {
  const names = useNames(state.plan);
  const unusual = unusualIn(state);
  return (
    <section>
      <h2>{words.sign.unusual}</h2>
      {unusual.length === 0 ? (
        <p>{words.sign.nothingUnusual}</p>
      ) : (
        <ul className={styles.unusual}>
          {unusual.map((one) => (
            <li key={JSON.stringify(one)}>{words.unusual(one, names)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
