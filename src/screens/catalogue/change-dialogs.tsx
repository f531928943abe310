/** Small changes of one step: its words, its time, and whether it is switched on. */

import { useState } from 'react';
import type { ChangedWords, Step } from '../../engine/plan';
import { catalogueWords } from '../../words/catalogue';
import { Notice, TextField } from '../parts';
import styles from './catalogue.module.css';
import { ChangeDialog } from './change-dialog';
import { linesOf, minutesOf } from './typed';
import type { ShownCatalogue } from './use-catalogue';

export interface StepChangeProps {
  readonly shown: ShownCatalogue;
  readonly step: Step;
  readonly onClose: () => void;
  readonly onKept: (version: number) => void;
}

const wordFields = ['title', 'how', 'why', 'right', 'wrong', 'wayRound'] as const;

export function WordsDialog({ step, ...frame }: StepChangeProps) {
  const text = catalogueWords.form;
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const born = frame.shown.born.catalogue.steps.find(({ id }) => id === step.id)?.cautions ?? [];
  const own = step.cautions.filter((caution) => !born.includes(caution));
  const [cautions, setCautions] = useState(own.join('\n'));
  const changes = () => {
    const changed: ChangedWords = {};
    for (const name of wordFields) {
      const now = typed[name]?.trim();
      if (now !== undefined && now !== '' && now !== step[name]) changed[name] = now;
    }
    const all = [...born, ...linesOf(cautions)];
    if (all.join('\n') !== step.cautions.join('\n')) changed.cautions = all;
    return [{ kind: 'change-words', step: step.id, words: changed }] as const;
  };
  return (
    <ChangeDialog {...frame} title={catalogueWords.change.words} changes={changes}>
      {wordFields.map((name) => (
        <TextField
          key={name}
          label={name === 'title' ? text.title : catalogueWords.step[name]}
          lines={name === 'title' ? 1 : 3}
          maxLength={name === 'title' ? 80 : 600}
          autoCapitalize="sentences"
          value={typed[name] ?? step[name] ?? ''}
          onChange={(value) => setTyped({ ...typed, [name]: value })}
        />
      ))}
      {born.map((caution) => (
        <Notice key={caution}>
          <p>{caution}</p>
        </Notice>
      ))}
      <TextField
        label={text.ownCautions}
        hint={text.cautionsHint}
        lines={3}
        value={cautions}
        onChange={setCautions}
        autoCapitalize="sentences"
      />
    </ChangeDialog>
  );
}

export function EffortDialog({ step, ...frame }: StepChangeProps) {
  const [typed, setTyped] = useState(() => step.effort.map(String));
  const [isWrong, setWrong] = useState(false);
  const changes = () => {
    const effort = minutesOf(typed);
    setWrong(effort === undefined);
    return effort && ([{ kind: 'set-effort', step: step.id, effort }] as const);
  };
  return (
    <ChangeDialog {...frame} title={catalogueWords.change.effort} changes={changes}>
      <EffortFields typed={typed} onChange={setTyped} isWrong={isWrong} />
    </ChangeDialog>
  );
}

export function EffortFields({
  typed,
  onChange,
  isWrong,
}: {
  readonly typed: readonly string[];
  readonly onChange: (typed: string[]) => void;
  readonly isWrong: boolean;
}) {
  const { least, likely, most, number } = catalogueWords.form;
  return (
    <div className={styles.three}>
      {[least, likely, most].map((label, index) => (
        <TextField
          key={label}
          label={label}
          inputMode="decimal"
          maxLength={6}
          value={typed[index] ?? ''}
          error={isWrong && minutesOf([typed[index] ?? '']) === undefined ? number : undefined}
          onChange={(value) => onChange(typed.map((one, at) => (at === index ? value : one)))}
        />
      ))}
    </div>
  );
}

export function SwitchDialog({ step, ...frame }: StepChangeProps) {
  const text = catalogueWords.form;
  const isOff = frame.shown.now.off.includes(step.id);
  const kind = isOff ? 'switch-on' : 'switch-off';
  return (
    <ChangeDialog
      {...frame}
      title={isOff ? text.onTitle(step.title) : text.offTitle(step.title)}
      changes={() => [{ kind, step: step.id }]}
    >
      {!isOff && <p>{text.offText}</p>}
    </ChangeDialog>
  );
}
