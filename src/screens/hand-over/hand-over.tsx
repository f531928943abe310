/** Hand-over: the customer is named, told what the sheet tells, and signs; the record is sealed. */

import { useState } from 'react';
import { useLocation } from 'wouter';
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
import { ActionBar, Checks, Notice, Page, TextField } from '../parts';
import { PinDialog } from '../pin-dialog';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import styles from './hand-over.module.css';
import { SignaturePad } from './signature-pad';

export function HandOver({ job }: { readonly job: string }) {
  return (
    <JobFrame job={job}>
      {(shown) => (
        <>
          <JobHead state={shown.open.state} />
          <HandOverOf shown={shown} />
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
  const [name, setName] = useState('');
  const [contact, setContact] = useState('');
  const [told, tell] = useState<readonly Topic[]>([]);
  const [firstCheck, setFirstCheck] = useState(daysAfter(app.clock.today(), firstCheckAfterDays));
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
          <Checks
            label={words.handOver.tell}
            options={topics.map((topic) => ({ value: topic, label: tellText(topic, state.plan) }))}
            values={told}
            onChange={tell}
          />
        </div>
        <div className={styles.column}>
          <TextField
            label={words.handOver.customer}
            value={name}
            onChange={setName}
            autoCapitalize="words"
            maxLength={80}
          />
          <TextField
            label={words.handOver.contact}
            hint={words.handOver.privacy}
            value={contact}
            onChange={setContact}
            maxLength={80}
          />
          <TextField
            label={words.handOver.firstCheck}
            hint={words.handOver.firstCheckHint}
            type="date"
            value={firstCheck}
            onChange={setFirstCheck}
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
