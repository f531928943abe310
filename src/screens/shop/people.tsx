/** The people of the shop: who works here, who has left, and a new one with a PIN. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { type Role, roles } from '../../engine/job';
import type { Person } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { Button, Checks, Empty, PinPad, pinLength, TextField } from '../parts';
import { NewPin } from './new-pin';
import { PersonHistory } from './person-history';
import styles from './shop.module.css';
import { SupervisedDialog } from './supervised';

export function People() {
  const people = useStore(useApp().people, ({ rows }) => rows);
  const [isAdding, add] = useState(false);
  return (
    <section>
      <div className={styles.head}>
        <h2>{words.shop.people}</h2>
        <Button onPress={() => add(true)}>{words.shop.addPerson}</Button>
      </div>
      {people.length === 0 && <Empty>{words.hands.nobody}</Empty>}
      <ul className={styles.people}>
        {people.map((person) => (
          <PersonRow key={person.id} person={person} />
        ))}
      </ul>
      {isAdding && <AddPerson onClose={() => add(false)} />}
    </section>
  );
}

function PersonRow({ person }: { readonly person: Person }) {
  const { name, active, demoPin } = person;
  const [asking, ask] = useState<'new-pin' | 'history' | 'retire'>();
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
            <Button label={`${words.shop.retire}: ${name}`} onPress={() => ask('retire')}>
              {words.shop.retire}
            </Button>
          </>
        )}
      </div>
      {asking === 'history' && <PersonHistory person={person} onClose={() => ask(undefined)} />}
      {asking === 'new-pin' && <NewPin person={person} onClose={() => ask(undefined)} />}
      {asking === 'retire' && <Retire person={person} onClose={() => ask(undefined)} />}
    </li>
  );
}

function AddPerson({ onClose }: { readonly onClose: () => void }) {
  const app = useApp();
  const [name, setName] = useState('');
  const [chosen, choose] = useState<readonly Role[]>(['mechanic']);
  const [pin, setPin] = useState('');
  return (
    <SupervisedDialog
      title={words.shop.addPerson}
      means={peopleLabels.addMeans(name.trim())}
      isReady={name.trim() !== '' && chosen.length > 0 && pin.length === pinLength}
      by={peopleLabels.addBy}
      onSupervised={async (by) => {
        const added = await app.addPerson({ name, roles: chosen, pin }, by);
        return added.ok ? undefined : words.refusal({ ...added.refusal });
      }}
      onClose={onClose}
    >
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
      <PinPad
        label={words.shop.pin}
        isLabelled
        value={pin}
        onChange={setPin}
        eraseLabel={words.app.erase}
      />
    </SupervisedDialog>
  );
}

function Retire({ person, onClose }: { readonly person: Person; readonly onClose: () => void }) {
  const app = useApp();
  return (
    <SupervisedDialog
      title={peopleLabels.retireTitle(person.name)}
      means={peopleLabels.retireMeans(person.name)}
      isReady
      by={peopleLabels.retireBy}
      onSupervised={async (by) => {
        const retired = await app.retirePerson(person.id, by);
        return retired.ok ? undefined : words.refusal({ ...retired.refusal });
      }}
      onClose={onClose}
    >
      <p>{peopleLabels.retireText}</p>
    </SupervisedDialog>
  );
}
