/** The PIN of whoever comes to the stand, where the shop asks for it. */

import type { Person } from '../state';
import { peopleLabels, words } from '../words';
import { useApp } from './app-context';
import { PinDialog } from './pin-dialog';

interface PinFirstProps {
  readonly person: Person;
  readonly onBack: () => void;
  readonly onCome: () => void;
}

export function PinFirst({ person, onBack, onCome }: PinFirstProps) {
  const app = useApp();
  return (
    <PinDialog
      person={person}
      means={peopleLabels.comePin}
      onClose={onBack}
      onPin={async (pin) => {
        const came = await app.comeWithPin(person.id, pin);
        if (!came.ok) return words.refusal({ ...came.refusal });
        onCome();
        return undefined;
      }}
    />
  );
}
