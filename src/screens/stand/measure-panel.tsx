/** A measured value with its limit: where to aim is one tap; another value comes from the pad. */

import { useState } from 'react';
import { useStore } from 'zustand';
import type { PlanMeasure, PlanStep } from '../../engine/plan';
import { kilopascals, kilopascalsFrom, kilopascalsTo, type PressureUnit } from '../../engine/units';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, NumberPad } from '../parts';
import type { ShownJob } from '../use-job';
import styles from './torque-panel.module.css';

export interface Measuring {
  readonly measure: PlanMeasure | undefined;
  readonly unit: string;
  readonly text: string;
  readonly isTyping: boolean;
  readonly type: (text: string) => void;
  readonly startTyping: (typing: boolean) => void;
  readonly limitText: string;
  readonly action: (
    following: string,
    onDone: () => void,
  ) => {
    readonly label: string;
    readonly detail: string;
    readonly disabled?: boolean;
    readonly onPress: () => void;
  };
}

/** The step's measure, shown in the unit the stand prefers, kept in its own. */
export function useMeasures({ store }: ShownJob, step: PlanStep): Measuring {
  const preferred = useStore(useApp().session, ({ preferences }) => preferences.pressureUnit);
  const [measure] = step.measures;
  const unit = measure?.unit === 'kPa' ? preferred : (measure?.unit ?? '');
  const suggested =
    measure?.suggested === undefined ? '' : shownValue(measure.suggested, measure, preferred);
  const [text, type] = useState(suggested);
  const [isTyping, startTyping] = useState(false);
  const value = Number(text);
  return {
    measure,
    unit,
    text,
    isTyping,
    type,
    startTyping,
    limitText: measure === undefined ? '' : limitText(measure, preferred, unit),
    action: (following, onDone) =>
      text === '' || !Number.isFinite(value)
        ? {
            label: words.stand.enterValue,
            detail: measure?.name ?? '',
            onPress: () => startTyping(true),
          }
        : {
            label: words.stand.recordValue(`${text} ${unit}`),
            detail: following,
            onPress: () =>
              void store
                .act({
                  kind: 'do-step',
                  step: step.id,
                  measures: { [measure?.id ?? '']: keptValue(value, measure, preferred) },
                })
                .then((kept) => kept && onDone()),
          },
  };
}

export function MeasurePanel({ measuring }: { readonly measuring: Measuring }) {
  const { measure, text, unit, limitText, isTyping, type, startTyping } = measuring;
  if (measure === undefined) return null;
  return (
    <section className={styles.panel}>
      <div className={styles.number}>
        <p className={styles.value}>
          {text === '' ? '–' : text}
          <span className={styles.unit}> {unit}</span>
        </p>
        <p className={styles.explained}>
          {measure.how} {limitText}
        </p>
        <div className={styles.change}>
          <Button tone="quiet" onPress={() => startTyping(true)}>
            {text === '' ? words.stand.enterValue : words.stand.other}
          </Button>
        </div>
      </div>
      {isTyping && (
        <Dialog
          title={measure.name}
          closeLabel={words.app.close}
          onClose={() => startTyping(false)}
        >
          <p className={styles.value}>
            {text === '' ? '–' : text}
            <span className={styles.unit}> {unit}</span>
          </p>
          <NumberPad
            label={measure.name}
            value={text}
            onChange={type}
            point="."
            eraseLabel={words.app.erase}
            maxLength={6}
          />
          <Notice as="status">
            <p>{limitText}</p>
          </Notice>
        </Dialog>
      )}
    </section>
  );
}

function shownValue(value: number, measure: PlanMeasure, preferred: PressureUnit): string {
  if (measure.unit !== 'kPa') return words.writing.figure(value);
  return words.writing.figure(
    kilopascalsTo(kilopascals(value), preferred),
    preferred === 'bar' ? 1 : 0,
  );
}

function keptValue(
  value: number,
  measure: PlanMeasure | undefined,
  preferred: PressureUnit,
): number {
  return measure?.unit === 'kPa' ? kilopascalsFrom(value, preferred) : value;
}

function limitText(measure: PlanMeasure, preferred: PressureUnit, unit: string): string {
  const { min, max, source } = measure.limit;
  const shown = (value: number) => Number(shownValue(value, measure, preferred));
  const range = words.writing.range({
    min: min === undefined ? undefined : shown(min),
    max: max === undefined ? undefined : shown(max),
  });
  return range === ''
    ? `${words.stand.unlimited} (${source}).`
    : `${words.stand.limit} ${range} ${unit} (${source}).`;
}
