/** One record into a file of its own, for whoever asks for it: without its customer's name. */

import { useState } from 'react';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Button, Notice } from '../parts';

export function SaveRecord({ job, name }: { readonly job: string; readonly name: string }) {
  const app = useApp();
  const [said, say] = useState<{ readonly isGood: boolean; readonly text: string }>();
  const [isBusy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    const saved = await app.saveRecords([job], { name, withCustomers: false });
    setBusy(false);
    say(
      saved.ok
        ? { isGood: true, text: fileWords.verify.saved }
        : { isGood: false, text: fileWords.refusal({ ...saved.refusal }) },
    );
  };
  return (
    <>
      <Button busy={isBusy} onPress={() => void save()}>
        {fileWords.verify.save}
      </Button>
      {said !== undefined && (
        <Notice as={said.isGood ? 'status' : 'alert'}>
          <p>{said.text}</p>
        </Notice>
      )}
    </>
  );
}
