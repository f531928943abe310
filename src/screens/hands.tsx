/** Who is at the stand: shown on every screen, changed with two taps. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { words } from '../words';
import { useApp, useHands } from './app-context';
import styles from './hands.module.css';
import { Button, Dialog, Notice } from './parts';

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
  return (
    <Dialog title={words.hands.title} closeLabel={words.app.close} onClose={onClose}>
      {people.length === 0 && (
        <Notice>
          <p>{words.hands.nobody}</p>
        </Notice>
      )}
      <div className={styles.people}>
        {people.map(({ id, name, roles }) => (
          <Button
            key={id}
            wide
            detail={roles.map((role) => words.terms.roleNames[role]).join(', ')}
            onPress={() => {
              app.session.getState().come(id);
              onClose();
            }}
          >
            {name}
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
