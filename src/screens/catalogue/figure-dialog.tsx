/** A figure for a make and model, approved by whoever keeps the version. */

import { useState } from 'react';
import type { ShopChange } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { TextField } from '../parts';
import styles from './catalogue.module.css';
import { ChangeDialog } from './change-dialog';
import type { StepChangeProps } from './change-dialogs';
import { numberIn } from './typed';

type Approved = Extract<ShopChange, { readonly kind: 'approve-figure' }>;

export function FigureDialog({ step, ...frame }: StepChangeProps) {
  const text = catalogueWords.form;
  const [make, setMake] = useState('');
  const [model, setModel] = useState('');
  const [min, setMin] = useState('');
  const [max, setMax] = useState('');
  const [isTried, setTried] = useState(false);
  const joint = frame.shown.now.catalogue.joints.find(({ id }) => id === step.joint);
  const badNumber = (typed: string) => typed.trim() !== '' && numberIn(typed) === undefined;
  const changes = () => {
    setTried(true);
    if (joint === undefined || make.trim() === '' || model.trim() === '') return undefined;
    if (badNumber(min) || badNumber(max)) return undefined;
    const [from, to] = [numberIn(min), numberIn(max)];
    const figure = {
      ...(from !== undefined && { min: from }),
      ...(to !== undefined && { max: to }),
    } as Approved['figure']; // N·m, as the labels say
    const named = { make: make.trim(), model: model.trim(), joint: joint.id };
    return [{ kind: 'approve-figure', ...named, figure }] as const;
  };
  const needed = (typed: string) => (isTried && typed.trim() === '' ? text.needed : undefined);
  const number = (typed: string) => (isTried && badNumber(typed) ? text.number : undefined);
  return (
    <ChangeDialog {...frame} title={catalogueWords.change.figure} changes={changes}>
      <p>{text.figureText}</p>
      {joint !== undefined && (
        <p>
          {joint.name}:{' '}
          {catalogueWords.step.usualText(words.writing.range(joint.usual), joint.source)}
        </p>
      )}
      <div className={styles.two}>
        <TextField
          label={text.make}
          value={make}
          onChange={setMake}
          maxLength={80}
          error={needed(make)}
        />
        <TextField
          label={text.model}
          value={model}
          onChange={setModel}
          maxLength={80}
          error={needed(model)}
        />
        <TextField
          label={text.min}
          value={min}
          onChange={setMin}
          inputMode="decimal"
          maxLength={6}
          error={number(min)}
        />
        <TextField
          label={text.max}
          value={max}
          onChange={setMax}
          inputMode="decimal"
          maxLength={6}
          error={number(max)}
        />
      </div>
    </ChangeDialog>
  );
}
