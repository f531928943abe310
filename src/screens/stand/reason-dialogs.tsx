/** Set aside, reopen, hold: each asks why, with the usual answers one tap away. */

import { type ReactNode, useState } from 'react';
import { type HoldReason, holdReasons, standingOfStep } from '../../engine/job';
import { type PlanStep, staleAfter } from '../../engine/plan';
import { words } from '../../words';
import { useNames } from '../app-context';
import { Button, Choice, Dialog, Notice, TextField } from '../parts';
import type { ShownJob } from '../use-job';
import styles from './stand.module.css';

interface StepDialogProps {
  readonly shown: ShownJob;
  readonly step: PlanStep;
  readonly onClose: () => void;
}

export function SetAsideDialog({
  shown,
  step,
  onClose,
  onDone,
}: StepDialogProps & { readonly onDone: () => void }) {
  return (
    <ReasonDialog
      title={words.stand.setAsideTitle}
      question={words.stand.reasonSetAside}
      quick={words.stand.quickAside}
      button={words.stand.setAsideButton}
      onClose={onClose}
      onReason={async (reason) => {
        if (await shown.store.act({ kind: 'set-step-aside', step: step.id, reason })) onDone();
        onClose();
      }}
    />
  );
}

export function ReopenDialog({ shown, step, onClose }: StepDialogProps) {
  const { state } = shown.open;
  const names = useNames(state.plan);
  const stale =
    state.plan === undefined
      ? []
      : staleAfter(state.plan, [step.id]).filter((id) => standingOfStep(state, id) === 'done');
  return (
    <ReasonDialog
      title={words.stand.reopenTitle}
      question={words.stand.reasonReopen}
      quick={words.stand.quickReopen}
      button={words.stand.reopenButton}
      onClose={onClose}
      onReason={async (reason) => {
        await shown.store.act({ kind: 'reopen-step', step: step.id, reason });
        onClose();
      }}
    >
      <Notice>
        <p>{stale.length === 0 ? words.stand.reopenAlone : words.stand.reopenWarns}</p>
        {stale.length > 0 && (
          <ul className={styles.staleList}>
            {stale.map((id) => (
              <li key={id}>{names.step(id)}</li>
            ))}
          </ul>
        )}
      </Notice>
    </ReasonDialog>
  );
}

interface ReasonDialogProps {
  readonly title: string;
  readonly question: string;
  readonly quick: readonly string[];
  readonly button: string;
  readonly onClose: () => void;
  readonly onReason: (reason: string) => Promise<void>;
  readonly children?: ReactNode;
}

function ReasonDialog(props: ReasonDialogProps) {
  const { title, question, quick, button, onClose, onReason, children } = props;
  const [reason, setReason] = useState('');
  const [isMissing, setMissing] = useState(false);
  return (
    <Dialog
      title={title}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button
          tone="solid"
          onPress={() => (reason.trim() === '' ? setMissing(true) : void onReason(reason))}
        >
          {button}
        </Button>
      }
    >
      {children}
      <div className={styles.quick}>
        {quick.map((answer) => (
          <Button key={answer} pressed={reason === answer} onPress={() => setReason(answer)}>
            {answer}
          </Button>
        ))}
      </div>
      <TextField
        label={question}
        value={reason}
        onChange={setReason}
        maxLength={200}
        error={
          isMissing && reason.trim() === '' ? words.refusal({ code: 'reason-missing' }) : undefined
        }
      />
    </Dialog>
  );
}

export function HoldDialog({
  shown,
  onClose,
}: {
  readonly shown: ShownJob;
  readonly onClose: () => void;
}) {
  const [reason, setReason] = useState<HoldReason>();
  const [note, setNote] = useState('');
  return (
    <Dialog
      title={words.stand.holdTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button
          tone="solid"
          disabled={reason === undefined}
          onPress={() => {
            if (reason !== undefined) void shown.store.act({ kind: 'hold-job', for: reason, note });
            onClose();
          }}
        >
          {words.stand.holdButton}
        </Button>
      }
    >
      <Choice
        label={words.stand.holdFor}
        value={reason}
        onChange={setReason}
        options={holdReasons.map((value) => ({ value, label: words.terms.holdNames[value] }))}
      />
      <TextField label={words.stand.holdNote} value={note} onChange={setNote} maxLength={200} />
    </Dialog>
  );
}
