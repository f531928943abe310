/** Sends named points and steps back to the stand, with the reason. */

import { useState } from 'react';
import { pointsOf, stepsOf } from '../../engine/job';
import { words } from '../../words';
import { Button, Checks, Dialog, TextField } from '../parts';
import type { ShownJob } from '../use-job';

export function SendBackDialog({
  shown,
  onClose,
}: {
  readonly shown: ShownJob;
  readonly onClose: () => void;
}) {
  const { state } = shown.open;
  const [picked, pick] = useState<readonly string[]>([]);
  const [search, setSearch] = useState('');
  const [reason, setReason] = useState('');
  const [isMissing, setMissing] = useState(false);
  const all = [
    ...pointsOf(state).map(({ id, name }) => ({ value: `point:${id}`, label: name })),
    ...stepsOf(state).map(({ id, title }) => ({ value: `step:${id}`, label: title })),
  ];
  const shownOptions = all.filter(
    ({ value, label }) =>
      picked.includes(value) || label.toLowerCase().includes(search.trim().toLowerCase()),
  );
  const named = (kind: string) =>
    picked.filter((one) => one.startsWith(`${kind}:`)).map((one) => one.slice(kind.length + 1));
  const send = async () => {
    if (reason.trim() === '' || picked.length === 0) return setMissing(true);
    await shown.store.act({
      kind: 'send-back',
      steps: named('step'),
      points: named('point'),
      reason,
    });
    onClose();
  };
  return (
    <Dialog
      title={words.sign.sendBackTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" onPress={() => void send()}>
          {words.sign.sendBackButton}
        </Button>
      }
    >
      <TextField
        label={words.sign.sendBackReason}
        value={reason}
        onChange={setReason}
        maxLength={200}
        error={
          isMissing && reason.trim() === '' ? words.refusal({ code: 'reason-missing' }) : undefined
        }
      />
      <TextField label={words.sign.find} type="search" value={search} onChange={setSearch} />
      <Checks
        label={words.sign.sendBackPick}
        options={shownOptions}
        values={picked}
        onChange={pick}
        error={
          isMissing && picked.length === 0 ? words.refusal({ code: 'nothing-named' }) : undefined
        }
      />
    </Dialog>
  );
}
