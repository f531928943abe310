/** A lost PIN: its owner chooses a new one, a supervisor says why and stands for it with their own PIN. */

import { useState } from 'react';
import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { PinPad, pinLength, TextField } from '../parts';
import { SupervisedDialog } from './supervised';

interface NewPinProps {
  readonly person: Person;
  readonly onClose: () => void;
}

export function NewPin({ person, onClose }: NewPinProps) {
  const app = useApp();
  const [reason, setReason] = useState('');
  const [pin, setPin] = useState('');
  return (
    <SupervisedDialog
      title={peopleLabels.newPinTitle(person.name)}
      means={peopleLabels.newPinMeans(person.name)}
      isReady={reason.trim() !== '' && pin.length === pinLength}
      by={peopleLabels.newPinBy}
      onSupervised={async (by) => {
        const issued = await app.issuePin({ person: person.id, pin, reason, ...by });
        return issued.ok ? undefined : words.refusal({ ...issued.refusal });
      }}
      onClose={onClose}
    >
      <p>{peopleLabels.newPinText}</p>
      <TextField
        label={peopleLabels.newPinReason}
        value={reason}
        onChange={setReason}
        maxLength={120}
      />
      <PinPad
        label={peopleLabels.newPinSix}
        isLabelled
        value={pin}
        onChange={setPin}
        eraseLabel={words.app.erase}
      />
    </SupervisedDialog>
  );
}
