/** Hand-over: the customer is named, told what the sheet tells, and signs; the record is sealed. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import {
  type Gate,
  gatesFor,
  type JobPlan,
  type JobState,
  statusOf,
  type Topic,
  topicsToTell,
} from '../../engine/job';
import { words } from '../../words';
import { useApp, useHands, useNames } from '../app-context';
import { JobFrame } from '../job-frame';
import { JobHead } from '../job-head';
import { ActionBar, Checks, Notice, Page, TextField, Working } from '../parts';
import { PinDialog } from '../pin-dialog';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { FoundOnBike } from './found-on-bike';
import styles from './hand-over.module.css';
import { useHandOverDraft } from './hand-over-draft';
import { SignaturePad } from './signature-pad';

export function HandOver({ job }: { readonly job: string }) {
  // Before its drafts are read, what is typed could not stand beside what was.
  const isLoaded = useStore(useApp().session, ({ loaded }) => loaded);
  return (
    <JobFrame job={job}>
      {(shown) => (
        <>
          <JobHead state={shown.open.state} />
          {isLoaded ? <HandOverOf shown={shown} /> : <Working>{words.app.opening}</Working>}
        </>
      )}
    </JobFrame>
  );
}

const firstCheckAfterDays = 42;

function HandOverOf({ shown }: { readonly shown: ShownJob }) {
  const app = useApp();
  const hands = useHands();
  const [, go] = useLocation();
  const { state, job, busy } = shown.open;
  const names = useNames(state.plan);
  const topics = topicsToTell(state) as readonly Topic[]; // the engine names only its own topics
  const { draft, change, forget } = useHandOverDraft(
    job,
    topics,
    daysAfter(app.clock.today(), firstCheckAfterDays),
  );
  const { name, contact, told, firstCheck } = draft;
  const [strokes, setStrokes] = useState('');
  const [isAsking, ask] = useState(false);
  const gates = closedGates(state);
  if (statusOf(state) === 'handed-over')
    return (
      <Page
        title={words.handOver.done}
        bar={
          <ActionBar
            action={{ label: words.handOver.print, onPress: () => go(routes.record(job)) }}
          />
        }
      >
        <p>{words.records.unaltered}</p>
      </Page>
    );
  const missing = [
    name.trim() === '' && words.refusal({ code: 'customer-missing' }),
    told.length < topics.length &&
      words.refusal({
        code: 'customer-not-told',
        topics: topics.filter((topic) => !told.includes(topic)),
      }),
    strokes === '' && words.handOver.sign,
  ].filter((sentence) => sentence !== false);
  return (
    <Page
      title={words.handOver.title}
      bar={
        <ActionBar
          aside={[{ label: words.app.rack, onPress: () => go(routes.rack) }]}
          action={
            gates.length > 0 || hands === undefined || missing.length > 0
              ? undefined
              : {
                  label: words.handOver.button,
                  detail: words.handOver.detail,
                  busy,
                  onPress: () => ask(true),
                }
          }
        >
          <p>{gates.length === 0 ? missing[0] : words.sign.yet}</p>
        </ActionBar>
      }
    >
      {gates.map((gate) => (
        <Notice key={gate.code} as="alert">
          <p>{words.refusal({ ...gate }, names)}</p>
        </Notice>
      ))}
      <div className={styles.columns}>
        <div className={styles.column}>
          <FoundOnBike state={state} />
          <Checks
            label={words.handOver.tell}
            options={topics.map((topic) => ({ value: topic, label: tellText(topic, state.plan) }))}
            values={told}
            onChange={(ticked) => change({ told: ticked })}
          />
        </div>
        <div className={styles.column}>
          <TextField
            label={words.handOver.customer}
            value={name}
            onChange={(typed) => change({ name: typed })}
            autoCapitalize="words"
            maxLength={80}
          />
          <TextField
            label={words.handOver.contact}
            hint={words.handOver.privacy}
            value={contact}
            onChange={(typed) => change({ contact: typed })}
            maxLength={80}
          />
          <TextField
            label={words.handOver.firstCheck}
            hint={words.handOver.firstCheckHint}
            type="date"
            value={firstCheck}
            onChange={(typed) => change({ firstCheck: typed })}
          />
          <SignaturePad onStrokes={setStrokes} />
        </div>
      </div>
      {isAsking && hands !== undefined && (
        <PinDialog
          person={hands}
          means={words.handOver.witness(hands.name)}
          onClose={() => ask(false)}
          onPin={async (pin) => {
            const customer = {
              name: name.trim(),
              ...(contact.trim() !== '' && { contact: contact.trim() }),
            };
            const done = await app.handOver({ job, pin, customer, told, firstCheck, strokes });
            if (!done.ok) return words.refusal({ ...done.refusal }, names);
            forget();
            go(routes.record(job));
            return undefined;
          }}
        />
      )}
    </Page>
  );
}

function tellText(topic: Topic, plan: JobPlan | undefined): string {
  const text = words.handOver.tells;
  if (topic === 'load-limit') return text['load-limit'](plan?.bike.loadLimit);
  if (topic === 'brake-levers') return text['brake-levers'](plan?.frontBrakeLever ?? 'none');
  return text[topic];
}

/** What stands in the way of any hand-over, before anybody has signed. */
function closedGates(state: JobState): readonly Gate[] {
  return gatesFor(state, {
    kind: 'hand-over',
    customer: '',
    told: [],
    firstCheck: '',
    signing: { meaning: 'received', heads: [], jws: '' },
    stamp: { by: '', roles: [], at: { claimed: '', zone: '' }, on: '', heads: [] },
  });
}

/** An ISO date some days after another. */
function daysAfter(date: string, days: number): string {
  const day = new Date(`${date}T12:00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  return day.toISOString().slice(0, 10);
}
