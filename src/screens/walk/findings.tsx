/** The findings of a job: open ones first, each with what can be done about it. */

import { useState } from 'react';
import { type Finding, openFindings } from '../../engine/job';
import { words } from '../../words';
import { useApp, useHands, useNames } from '../app-context';
import { Button, Dialog, Notice, TextField } from '../parts';
import { PinDialog } from '../pin-dialog';
import type { ShownJob } from '../use-job';
import { FindingDialog } from './finding-dialog';
import styles from './walk.module.css';

export function Findings({ shown }: { readonly shown: ShownJob }) {
  const app = useApp();
  const { store, open } = shown;
  const [isRaising, setRaising] = useState(false);
  const isOpen = new Set(openFindings(open.state).map(({ id }) => id));
  const findings = [...open.state.findings].sort(
    (a, b) => Number(isOpen.has(b.id)) - Number(isOpen.has(a.id)),
  );
  return (
    <section className={styles.findings}>
      <div className={styles.head}>
        <h2>{words.walk.findings}</h2>
        <Button onPress={() => setRaising(true)}>{words.walk.raise}</Button>
      </div>
      {findings.length === 0 && <p>{words.walk.noFindings}</p>}
      <ul className={styles.list}>
        {findings.map((finding) => (
          <FindingRow key={finding.id} shown={shown} finding={finding} />
        ))}
      </ul>
      {isRaising && (
        <FindingDialog
          shown={shown}
          severity="before-hand-over"
          onClose={() => setRaising(false)}
          onFinding={async (finding) => {
            await store.act({
              kind: 'raise-finding',
              finding: app.newId(),
              ...pickFinding(finding),
            });
            setRaising(false);
          }}
        />
      )}
    </section>
  );
}

function pickFinding({ severity, text, photos }: Pick<Finding, 'severity' | 'text' | 'photos'>) {
  return { severity, text, photos };
}

function FindingRow({ shown, finding }: { readonly shown: ShownJob; readonly finding: Finding }) {
  const app = useApp();
  const hands = useHands();
  const names = useNames(shown.open.state.plan);
  /** Why a supervisor lets it go: their PIN stands for it. */
  const [reason, stand] = useState<string>();
  const [asking, ask] = useState<'close' | 'allow'>();
  const isOpen = finding.closed === undefined && finding.allowed === undefined;
  const mayAllow = hands?.roles.includes('supervisor') ?? false;
  const state =
    finding.closed !== undefined
      ? words.walk.closedHow(finding.closed.how)
      : finding.allowed !== undefined
        ? words.letGo(finding.allowed.reason, names.person(finding.allowed.by))
        : words.walk.open;
  return (
    <li className={styles.finding}>
      <p>
        <strong>{words.terms.severities[finding.severity]}</strong> · {finding.text} · {state}
      </p>
      {isOpen && (
        <div className={styles.others}>
          <Button onPress={() => ask('close')}>{words.walk.close}</Button>
          {mayAllow && finding.severity !== 'tell-customer' && (
            <Button onPress={() => ask('allow')}>{words.walk.allow}</Button>
          )}
        </div>
      )}
      {asking !== undefined && (
        <AnswerDialog
          asking={asking}
          onClose={() => ask(undefined)}
          onAnswer={async (text) => {
            ask(undefined);
            if (asking === 'allow') return stand(text);
            await shown.store.act({ kind: 'close-finding', finding: finding.id, how: text });
          }}
        />
      )}
      {reason !== undefined && hands !== undefined && (
        <PinDialog
          person={hands}
          means={words.walk.allowWarning}
          onClose={() => stand(undefined)}
          onPin={async (pin) => {
            const by = { supervisor: hands.id, supervisorPin: pin };
            const asked = { job: shown.open.job, finding: finding.id, reason, ...by };
            const allowed = await app.allowFinding(asked);
            return allowed.ok ? undefined : words.refusal({ ...allowed.refusal }, names);
          }}
        />
      )}
    </li>
  );
}

interface AnswerDialogProps {
  readonly asking: 'close' | 'allow';
  readonly onClose: () => void;
  readonly onAnswer: (text: string) => Promise<void>;
}

function AnswerDialog({ asking, onClose, onAnswer }: AnswerDialogProps) {
  const [text, setText] = useState('');
  const [isMissing, setMissing] = useState(false);
  const isClosing = asking === 'close';
  return (
    <Dialog
      title={isClosing ? words.walk.closeTitle : words.walk.allowTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button
          tone="solid"
          onPress={() => (text.trim() === '' ? setMissing(true) : void onAnswer(text))}
        >
          {isClosing ? words.walk.closeButton : words.walk.allowButton}
        </Button>
      }
    >
      <Notice>
        <p>{isClosing ? words.walk.closeLook : words.walk.allowWarning}</p>
      </Notice>
      <TextField
        label={isClosing ? words.walk.closeTitle : words.walk.allowReason}
        value={text}
        onChange={setText}
        maxLength={200}
        error={
          isMissing && text.trim() === '' ? words.refusal({ code: 'reason-missing' }) : undefined
        }
      />
    </Dialog>
  );
}
