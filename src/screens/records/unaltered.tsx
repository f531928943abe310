/** Whether a record is unaltered, checked anew from the disk each time it is opened, and whose signature nobody here can check. */

import { useEffect, useState } from 'react';
import { words } from '../../words';
import { fileWords } from '../../words/file-words';
import { useApp } from '../app-context';
import { Notice, Working } from '../parts';

interface Answer {
  readonly isGood: boolean;
  readonly text: string;
  readonly unsure: readonly string[];
}

export function Unaltered({ job }: { readonly job: string }) {
  const app = useApp();
  const [answer, setAnswer] = useState<Answer>();
  useEffect(() => {
    const check = async () => {
      const [log, signatures] = await Promise.all([app.checkLog(job), app.checkSignatures(job)]);
      const unknown = signatures.filter(({ finding }) => finding === 'signer-unknown');
      const unsure = unknown.map(({ meaning, name, by }) =>
        fileWords.verify.signerUnknown(fileWords.verify.meanings[meaning], name ?? by),
      );
      setAnswer(
        log.ok
          ? { isGood: true, text: words.records.checked(log.value.count), unsure }
          : { isGood: false, text: words.refusal({ ...log.refusal }), unsure },
      );
    };
    void check();
  }, [app, job]);
  if (answer === undefined) return <Working>{words.records.checking}</Working>;
  return (
    <Notice as={answer.isGood ? 'status' : 'alert'}>
      <p>
        <strong>{answer.isGood ? words.records.unaltered : words.records.altered}</strong>{' '}
        {[answer.text, ...answer.unsure].join(' ')}
      </p>
    </Notice>
  );
}
