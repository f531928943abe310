/** A measured value: the likely ones to tap, and a pad for every other. */

import { useState } from 'react';
import { readyValues } from '../engine/inspection';
import type { PlanMeasure } from '../engine/plan';
import type { PressureUnit } from '../engine/units';
import { words } from '../words';
import { limitText, shownLimit, shownUnit } from './measure-units';
import { Button, Dialog, NumberPad } from './parts';
import styles from './value-dialog.module.css';

export interface ValueDialogProps {
  readonly measure: PlanMeasure;
  readonly preferred: PressureUnit;
  readonly onClose: () => void;
  /** The value as shown, in the unit the stand prefers. */
  readonly onValue: (value: string) => void;
}

export function ValueDialog({ measure, preferred, onClose, onValue }: ValueDialogProps) {
  const [text, type] = useState('');
  const unit = shownUnit(measure, preferred);
  const isNumber = text !== '' && Number.isFinite(Number(text));
  return (
    <Dialog
      title={measure.name}
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" disabled={!isNumber} onPress={() => onValue(text)}>
          {words.stand.recordValue(isNumber ? `${text} ${unit}` : '')}
        </Button>
      }
    >
      <p className={styles.value}>
        {text === '' ? '–' : text} <span className={styles.unit}>{unit}</span>
      </p>
      <p>
        {measure.how} {limitText(measure, preferred)}
      </p>
      <NumberPad
        label={measure.name}
        value={text}
        onChange={type}
        point="."
        eraseLabel={words.app.erase}
        maxLength={6}
      />
    </Dialog>
  );
}

export interface ReadyValuesProps {
  readonly measure: PlanMeasure;
  readonly preferred: PressureUnit;
  /** Where it is told how to measure. */
  readonly labelledBy: string;
  readonly busy: boolean;
  readonly onValue: (value: string) => void;
  readonly onOther: () => void;
}

/** One tap records a value inside the limit; any other is one tap further. */
export function ReadyValues(props: ReadyValuesProps) {
  const { measure, preferred, labelledBy, busy, onValue, onOther } = props;
  const unit = shownUnit(measure, preferred);
  return (
    <fieldset className={styles.ready} aria-labelledby={labelledBy}>
      {readyValues(shownLimit(measure, preferred)).map((value) => {
        const text = words.writing.figure(value, 2);
        return (
          <Button
            key={text}
            busy={busy}
            label={words.stand.recordValue(`${text} ${unit}`)}
            onPress={() => onValue(text)}
          >
            {text}
          </Button>
        );
      })}
      <Button label={words.stand.other} onPress={onOther}>
        {words.stand.otherShort}
      </Button>
    </fieldset>
  );
}
