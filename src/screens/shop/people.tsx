/** The people of the shop: who works here, who has left, and a new one with a PIN. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { type Role, roles } from '../../engine/job';
import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp, useHands } from '../app-context';
import { Button, Checks, Dialog, Empty, Notice, NumberPad, TextField } from '../parts';
import { PinDialog } from '../pin-dialog';
import { NewPin } from './new-pin';
import { PersonHistory } from './person-history';
import styles from './shop.module.css';

export function People() {
  const app = useApp();
  const hands = useHands();
  const people = useStore(app.people, ({ rows }) => rows);
  const [asking, ask] = useState<'pin' | 'person' | 'supervisor'>();
  const isSupervisor = hands?.roles.includes('supervisor') ?? false;
  return (
    <section>
      <div className={styles.head}>
        <h2>{words.shop.people}</h2>
        <Button onPress={() => ask(isSupervisor ? 'pin' : 'supervisor')}>
          {words.shop.addPerson}
        </Button>
      </div>
      {asking === 'supervisor' && (
        <Notice as="alert">
          <p>{words.refusal({ code: 'not-a-supervisor' })}</p>
        </Notice>
      )}
      {people.length === 0 && <Empty>{words.hands.nobody}</Empty>}
      <ul className={styles.people}>
        {people.map((person) => (
          <PersonRow key={person.id} person={person} />
        ))}
      </ul>
      {asking === 'pin' && hands !== undefined && (
        <PinDialog
          person={hands}
          means={words.shop.addMeans}
          onClose={() => ask((now) => (now === 'pin' ? undefined : now))}
          onPin={async (pin) => {
            const proved = await app.provePin(hands.id, pin);
            if (!proved.ok) return words.refusal({ ...proved.refusal });
            ask('person');
            return undefined;
          }}
        />
      )}
      {asking === 'person' && <AddPerson onClose={() => ask(undefined)} />}
    </section>
  );
}

function PersonRow({ person }: { readonly person: Person }) {
  const app = useApp();
  const { id, name, active, demoPin } = person;
  const [asking, ask] = useState<'new-pin' | 'history'>();
  return (
    <li className={styles.person}>
      <strong>{name}</strong>
      <span>
        {person.roles.map((role) => words.terms.roleNames[role]).join(', ')}
        {!active && ` · ${words.shop.left}`}
      </span>
      <span>{demoPin !== undefined && words.sign.demoPin(demoPin)}</span>
      <div className={styles.buttons}>
        <Button label={peopleLabels.historyOf(name)} onPress={() => ask('history')}>
          {peopleLabels.history}
        </Button>
        {active && (
          <>
            <Button label={peopleLabels.newPinTitle(name)} onPress={() => ask('new-pin')}>
              {peopleLabels.newPin}
            </Button>
            <Button
              label={`${words.shop.retire}: ${name}`}
              onPress={() => void app.retirePerson(id)}
            >
              {words.shop.retire}
            </Button>
          </>
        )}
      </div>
      {asking === 'history' && <PersonHistory person={person} onClose={() => ask(undefined)} />}
      {asking === 'new-pin' && <NewPin person={person} onClose={() => ask(undefined)} />}
    </li>
  );
}

function AddPerson({ onClose }: { readonly onClose: () => void }) {
  const app = useApp();
  const [name, setName] = useState('');
  const [chosen, choose] = useState<readonly Role[]>(['mechanic']);
  const [pin, setPin] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const save = async () => {
    setBusy(true);
    const added = await app.addPerson({ name, roles: chosen, pin });
    setBusy(false);
    if (added.ok) onClose();
    else setProblem(words.refusal({ ...added.refusal }));
  };
  return (
    <Dialog
      title={words.shop.addPerson}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" busy={isBusy} onPress={() => void save()}>
          {words.shop.addButton}
        </Button>
      }
    >
      {problem !== undefined && (
        <Notice as="alert">
          <p>{problem}</p>
        </Notice>
      )}
      <TextField
        label={words.shop.personName}
        value={name}
        onChange={setName}
        maxLength={80}
        autoCapitalize="words"
      />
      <Checks
        label={words.shop.roles}
        values={chosen}
        onChange={choose}
        options={roles.map((value) => ({ value, label: words.terms.roleNames[value] }))}
      />
      <p>
        {words.shop.pin}: {'●'.repeat(pin.length)}
        {'○'.repeat(6 - pin.length)}
      </p>
      <NumberPad
        label={words.shop.pin}
        value={pin}
        onChange={setPin}
        eraseLabel={words.app.erase}
        maxLength={6}
      />
    </Dialog>
  );
}
