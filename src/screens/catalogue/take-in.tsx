/** A file of changes: read, looked through, decided where both sides changed the same, and taken in whole or not at all. */

import { useState } from 'react';
import type { CatalogueVersion, ChangeConflict, VersionedChange } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { useApp } from '../app-context';
import { Button, Choice, FilePicker, Notice, Problem, TextField, Working } from '../parts';
import styles from './catalogue.module.css';
import type { ShownCatalogue } from './use-catalogue';
import { refusalText } from './use-change';
import { VersionText } from './version-text';

interface Read {
  readonly versions: readonly CatalogueVersion[];
  readonly incoming: readonly CatalogueVersion[];
  readonly conflicts: readonly ChangeConflict[];
}

export interface TakeInProps {
  readonly shown: ShownCatalogue;
  readonly onTaken: (count: number) => void;
}

export function TakeIn({ shown, onTaken }: TakeInProps) {
  const app = useApp();
  const text = catalogueWords.history;
  const [read, setRead] = useState<Read>();
  const [said, say] = useState<string>();
  const [problem, setProblem] = useState<string>();
  const pick = async (file: Blob) => {
    setRead(undefined);
    setProblem(undefined);
    say(text.reading);
    const content = await app.readTextFile(file);
    const found = content.ok ? await app.readCatalogueFile(content.value) : content;
    say(undefined);
    if (!found.ok) setProblem(refusalText(found.refusal, shown.names));
    else if (found.value.incoming.length === 0) say(text.nothingNew);
    else setRead(found.value);
  };
  return (
    <>
      <FilePicker accept=".json,application/json" onPick={(file) => void pick(file)}>
        {text.read}
      </FilePicker>
      {said !== undefined && <Working>{said}</Working>}
      <Problem>{problem}</Problem>
      {read !== undefined && (
        <Decide
          read={read}
          shown={shown}
          onTaken={(count) => {
            setRead(undefined);
            onTaken(count);
          }}
        />
      )}
    </>
  );
}

function Decide({ read, shown, onTaken }: TakeInProps & { readonly read: Read }) {
  const app = useApp();
  const text = catalogueWords.history;
  const [decided, decide] = useState<Readonly<Record<string, 'mine' | 'theirs'>>>({});
  const [reason, setReason] = useState('');
  const [tried, setTried] = useState<readonly [number, number]>();
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const { versions, incoming, conflicts } = read;
  const takeIn = async () => {
    setBusy(true);
    setProblem(undefined);
    const taken = await app.takeInCatalogue({ versions, decided, reason }, (done, of) =>
      setTried([done, of]),
    );
    setBusy(false);
    setTried(undefined);
    if (taken.ok) onTaken(taken.value);
    else setProblem(refusalText(taken.refusal, shown.names));
  };
  const said = ({ change }: VersionedChange) =>
    catalogueWords.changeText(change, shown.names, () => undefined);
  return (
    <section className={styles.section}>
      <h3>{text.comes(incoming.length)}</h3>
      <ul className={styles.rows}>
        {incoming.map((version) => (
          <li key={version.id} className={styles.version}>
            <VersionText version={version} shown={shown} />
          </li>
        ))}
      </ul>
      <Notice>
        <p>{text.standFor}</p>
      </Notice>
      {conflicts.length > 0 && (
        <>
          <h3>{text.conflicts}</h3>
          <p>{text.conflictsText}</p>
        </>
      )}
      {conflicts.map((conflict) => (
        <Choice
          key={conflict.subject}
          label={subjectText(conflict)}
          columns="one"
          value={decided[conflict.subject]}
          onChange={(whose) => decide({ ...decided, [conflict.subject]: whose })}
          options={[
            {
              value: 'mine',
              label: text.mine(conflict.mine.version.by),
              detail: said(conflict.mine),
            },
            {
              value: 'theirs',
              label: text.theirs(conflict.theirs.version.by),
              detail: said(conflict.theirs),
            },
          ]}
        />
      ))}
      <TextField
        label={catalogueWords.form.reason}
        hint={catalogueWords.form.reasonHint}
        value={reason}
        onChange={setReason}
        maxLength={400}
        autoCapitalize="sentences"
      />
      {tried !== undefined && <Working>{catalogueWords.form.trying(...tried)}</Working>}
      <Problem>{problem}</Problem>
      <div className={styles.buttons}>
        <Button tone="solid" busy={isBusy} onPress={() => void takeIn()}>
          {text.takeIn(incoming.length)}
        </Button>
      </div>
    </section>
  );

  function subjectText({ mine }: ChangeConflict): string {
    const { change } = mine;
    if ('step' in change)
      return typeof change.step === 'string' ? shown.names.step(change.step) : change.step.title;
    if ('joint' in change)
      return typeof change.joint === 'string' ? shown.names.joint(change.joint) : change.joint.name;
    return words.app.catalogue;
  }
}
