/** What a supervisor stands for: what is asked, then who says so, then their own PIN; whoever is at the stand. */

import { type ReactNode, useState } from 'react';
import { useStore } from 'zustand';
import type { Person, Supervised } from '../../state';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice } from '../parts';
import { PinDialog } from '../pin-dialog';
import styles from './shop.module.css';

export interface SupervisedDialogProps {
  readonly title: string;
  readonly children: ReactNode;
  /** What the PIN stands for. */
  readonly means: string;
  readonly isReady: boolean;
  readonly by: (supervisor: string) => string;
  /** Answers with a sentence when it was refused. */
  readonly onSupervised: (by: Supervised) => Promise<string | undefined>;
  readonly onClose: () => void;
}

export function SupervisedDialog(props: SupervisedDialogProps) {
  const { title, children, means, isReady, by, onSupervised, onClose } = props;
  const supervisors = useStore(useApp().people, ({ rows }) => rows).filter(
    ({ active, roles }) => active && roles.includes('supervisor'),
  );
  const [asking, ask] = useState<Person>();
  if (asking !== undefined)
    return (
      <PinDialog
        person={asking}
        means={means}
        onClose={() => ask(undefined)}
        onPin={async (supervisorPin) => {
          const refused = await onSupervised({ supervisor: asking.id, supervisorPin });
          if (refused === undefined) onClose();
          return refused;
        }}
      />
    );
  return (
    <Dialog title={title} closeLabel={words.app.cancel} onClose={onClose}>
      {children}
      {supervisors.length === 0 && (
        <Notice>
          <p>{peopleLabels.noSupervisor}</p>
        </Notice>
      )}
      <div className={styles.buttons}>
        {supervisors.map((supervisor) => (
          <Button key={supervisor.id} disabled={!isReady} onPress={() => ask(supervisor)}>
            {by(supervisor.name)}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}
