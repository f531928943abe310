/** Who is at the stand: shown on every screen, changed with one tap, and a PIN where the shop asks for it. */

import { lazy, Suspense, useState } from 'react';
import { useStore } from 'zustand';
import type { Person } from '../state';
import { words } from '../words';
import { useApp, useHands } from './app-context';
import styles from './hands.module.css';
import { Button, Dialog, Notice } from './parts';

const PinFirst = lazy(() => import('./pin-first').then((m) => ({ default: m.PinFirst })));

export function HandsButton() {
  const app = useApp();
  const hands = useHands();
  const stand = useStore(app.session, ({ preferences }) => preferences.stand);
  const [asking, ask] = useState(false);
  return (
    <>
      <Button tone="quiet" onPress={() => ask(true)}>
        {hands === undefined ? (
          words.app.nobody
        ) : (
          <>
            {hands.name}
            <span className={styles.stand}> {words.app.atStand(stand)}</span>
          </>
        )}
      </Button>
      {asking && <HandsDialog onClose={() => ask(false)} />}
    </>
  );
}

/** Asks who it is; closes as soon as somebody has said so. */
export function HandsDialog({ onClose }: { readonly onClose: () => void }) {
  const app = useApp();
  const people = useStore(app.people, ({ rows }) => rows).filter(({ active }) => active);
  const hands = useHands();
  const asksPin = useStore(app.session, ({ preferences }) => preferences.askPin);
  const [coming, setComing] = useState<Person>();
  const come = (person: Person) => {
    if (asksPin && person.id !== hands?.id) return setComing(person);
    app.session.getState().come(person.id);
    onClose();
  };
  if (coming !== undefined)
    return (
      <Suspense>
        <PinFirst person={coming} onBack={() => setComing(undefined)} onCome={onClose} />
      </Suspense>
    );
  return (
    <Dialog title={words.hands.title} closeLabel={words.app.close} onClose={onClose}>
      {people.length === 0 && (
        <Notice>
          <p>{words.hands.nobody}</p>
        </Notice>
      )}
      <div className={styles.people}>
        {people.map((person) => (
          <Button
            key={person.id}
            wide
            detail={person.roles.map((role) => words.terms.roleNames[role]).join(', ')}
            onPress={() => come(person)}
          >
            {person.name}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}

/** On a screen where work is recorded, somebody has to be there first. */
export function SomebodyFirst() {
  const hands = useHands();
  const app = useApp();
  const loaded = useStore(app.session, (session) => session.loaded);
  const [putOff, setPutOff] = useState(false);
  if (!loaded || hands !== undefined || putOff) return null;
  return <HandsDialog onClose={() => setPutOff(true)} />;
}
