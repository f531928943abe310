/** Said plainly where this browser does not keep signing keys as it should. */

import { useEffect, useState } from 'react';
import { peopleLabels, words } from '../../words';
import { useApp } from '../app-context';
import { Notice } from '../parts';

export function KeysKept() {
  const app = useApp();
  const [said, say] = useState<{ readonly title: string; readonly text: string }>();
  useEffect(() => {
    void app.keysKeptAs().then((kept) => {
      if (!kept.ok)
        say({ title: peopleLabels.keysRefused, text: words.refusal({ ...kept.refusal }) });
      else if (kept.value === 'data')
        say({ title: peopleLabels.keysAsData, text: peopleLabels.keysAsDataText });
    });
  }, [app]);
  if (said === undefined) return null;
  return (
    <Notice as="alert">
      <p>
        <strong>{said.title}.</strong> {said.text}
      </p>
    </Notice>
  );
}
