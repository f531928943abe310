/** A lost PIN: its owner chooses a new one, a supervisor says why and stands for it with their own PIN. */

import { useState } from 'react';
import { useStore } from 'zustand';
import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, NumberPad, TextField } from '../parts';
import { PinDialog, pinLength } from '../pin-dialog';
import styles from './shop.module.css';

interface NewPinProps {
  readonly person: Person;
  readonly onClose: () => void;
}

export function NewPin({ person, onClose }: NewPinProps) {
  const app = useApp();
  const supervisors = useStore(app.people, ({ rows }) => rows).filter(
    ({ active, roles }) => active && roles.includes('supervisor'),
  );
  const [reason, setReason] = useState('');
  const [pin, setPin] = useState('');
  const [asking, ask] = useState<Person>();
  if (asking !== undefined)
    return (
      <PinDialog
        person={asking}
        means={peopleLabels.newPinMeans(person.name)}
        onClose={() => ask(undefined)}
        onPin={async (supervisorPin) => {
          const supervisor = asking.id;
          const asked = { person: person.id, pin, reason, supervisor, supervisorPin };
          const issued = await app.issuePin(asked);
          if (!issued.ok) return words.refusal({ ...issued.refusal });
          onClose();
          return undefined;
        }}
      />
    );
  const isReady = reason.trim() !== '' && pin.length === pinLength;
  return (
    <Dialog
      title={peopleLabels.newPinTitle(person.name)}
      closeLabel={words.app.cancel}
      onClose={onClose}
    >
      <p>{peopleLabels.newPinText}</p>
      <TextField
        label={peopleLabels.newPinReason}
        value={reason}
        onChange={setReason}
        maxLength={120}
      />
      <p>
        {peopleLabels.newPinSix}: {'●'.repeat(pin.length)}
        {'○'.repeat(pinLength - pin.length)}
      </p>
      <NumberPad
        label={peopleLabels.newPinSix}
        value={pin}
        onChange={setPin}
        eraseLabel={words.app.erase}
        maxLength={pinLength}
      />
      {supervisors.length === 0 && (
        <Notice>
          <p>{peopleLabels.noSupervisor}</p>
        </Notice>
      )}
      <div className={styles.buttons}>
        {supervisors.map((supervisor) => (
          <Button key={supervisor.id} disabled={!isReady} onPress={() => ask(supervisor)}>
            {peopleLabels.newPinBy(supervisor.name)}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}
