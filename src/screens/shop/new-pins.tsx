/** After a restore: private keys stayed behind, so each person who works here chooses a PIN. */

import { useState } from 'react';
import { useStore } from 'zustand';
import type { Person } from '../../state';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, Dialog, PinPad, Problem } from '../parts';
import styles from './shop.module.css';

export function NewPins() {
  const people = useStore(useApp().people, ({ rows }) => rows).filter(({ active }) => active);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [asking, ask] = useState<Person>();
  return (
    <section>
      <h2>{fileWords.takeIn.pins}</h2>
      <p>{fileWords.takeIn.pinsText}</p>
      <div className={styles.buttons}>
        {people.map((person) => (
          <Button
            key={person.id}
            {...(chosen.has(person.id) && { detail: fileWords.takeIn.pinKept })}
            onPress={() => ask(person)}
          >
            {person.name}
          </Button>
        ))}
      </div>
      {asking !== undefined && (
        <PinFor
          person={asking}
          onKept={() => setChosen(new Set([...chosen, asking.id]))}
          onClose={() => ask(undefined)}
        />
      )}
    </section>
  );
}

interface PinForProps {
  readonly person: Person;
  readonly onKept: () => void;
  readonly onClose: () => void;
}

function PinFor({ person, onKept, onClose }: PinForProps) {
  const app = useApp();
  const [pin, setPin] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const label = fileWords.takeIn.pinFor(person.name);
  const keep = async () => {
    setBusy(true);
    const kept = await app.choosePin(person.id, pin);
    setBusy(false);
    if (!kept.ok) return setProblem(fileWords.refusal({ ...kept.refusal }));
    app.session.getState().come(person.id);
    onKept();
    onClose();
  };
  return (
    <Dialog
      title={label}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" busy={isBusy} onPress={() => void keep()}>
          {fileWords.takeIn.pinButton}
        </Button>
      }
    >
      <Problem>{problem}</Problem>
      <PinPad label={label} value={pin} onChange={setPin} eraseLabel={words.app.erase} />
    </Dialog>
  );
}
