/** A PIN on a big pad: the gesture with which somebody signs. Goes on by itself at the sixth digit. */

import { useState } from 'react';
import type { Person } from '../state';
import { words } from '../words';
import { Dialog, PinPad, Problem, pinLength, Working } from './parts';

export interface PinDialogProps {
  readonly person: Person;
  readonly means: string;
  /** Answers with a sentence when it could not be signed. */
  readonly onPin: (pin: string) => Promise<string | undefined>;
  readonly onClose: () => void;
}

export function PinDialog({ person, means, onPin, onClose }: PinDialogProps) {
  const [pin, setPin] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const type = async (typed: string) => {
    if (isBusy) return;
    setPin(typed);
    // What was said about the last one does not stand over the next.
    setProblem(undefined);
    if (typed.length < pinLength) return;
    setBusy(true);
    const refused = await onPin(typed);
    setBusy(false);
    setPin('');
    setProblem(refused);
    if (refused === undefined) onClose();
  };
  return (
    <Dialog title={words.sign.pinOf(person.name)} closeLabel={words.app.cancel} onClose={onClose}>
      <p>{means}</p>
      {isBusy && <Working>{words.sign.wait}</Working>}
      <Problem>{problem}</Problem>
      <PinPad
        label={words.app.pin}
        value={pin}
        onChange={(typed) => void type(typed)}
        eraseLabel={words.app.erase}
      />
      {person.demoPin !== undefined && <p>{words.sign.demoPin(person.demoPin)}</p>}
    </Dialog>
  );
}
