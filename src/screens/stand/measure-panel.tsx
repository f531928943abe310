/** A measured value with its limit: where to aim is one tap; another value comes from the pad. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { type Asked, missingMeasures, type NextPass } from '../../engine/job';
import type { PlanMeasure, PlanStep } from '../../engine/plan';
import type { PressureUnit } from '../../engine/units';
import { words } from '../../words';
import { useApp } from '../app-context';
import { keptValue, limitOf, shownUnit, shownValue } from '../measure-units';
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
  /** The last value taken, when it lies outside the limit. */
  readonly outside: string | undefined;
  /** On a joint the measure comes before its last round; by itself it is the step. */
  readonly isDue: (next: NextPass | undefined) => boolean;
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
export function useMeasures({ store, open }: ShownJob, step: PlanStep): Measuring {
  const preferred = useStore(useApp().session, ({ preferences }) => preferences.pressureUnit);
  const [measure] = step.measures;
  const unit = measure === undefined ? '' : shownUnit(measure, preferred);
  const suggested =
    measure?.suggested === undefined ? '' : shownValue(measure.suggested, measure, preferred);
  const [text, type] = useState(suggested);
  const [isTyping, startTyping] = useState(false);
  const value = Number(text);
  const mark = measure && open.state.measures[`${step.id}.${measure.id}`];
  const isOutside = mark?.judged === 'outside' && !mark.stale;
  return {
    measure,
    unit,
    text,
    isTyping,
    type,
    startTyping,
    outside: isOutside ? outsideText(mark.value, measure, preferred) : undefined,
    isDue: (next) => {
      if (step.joint === undefined) return step.measures.length > 0;
      const isLastRound = next !== undefined && next.pass.pass === next.of;
      return isLastRound && missingMeasures(open.state, step).length > 0;
    },
    limitText: measure === undefined ? '' : limitText(measure, preferred),
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
                .act(recorded(step, measure, keptValue(value, measure, preferred)))
                .then((kept) => kept && step.joint === undefined && onDone()),
          },
  };
}

export function MeasurePanel({ measuring }: { readonly measuring: Measuring }) {
  const { measure, text, unit, limitText, outside, isTyping, type, startTyping } = measuring;
  if (measure === undefined) return null;
  return (
    <section className={styles.panel}>
      <div className={styles.number}>
        {outside !== undefined && (
          <Notice as="alert">
            <p>{outside}</p>
          </Notice>
        )}
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

/** By itself a measure does its step; on a joint it is kept, and the last round does the step. */
function recorded(step: PlanStep, measure: PlanMeasure | undefined, value: number): Asked {
  const id = measure?.id ?? '';
  return step.joint === undefined
    ? { kind: 'do-step', step: step.id, measures: { [id]: value } }
    : { kind: 'take-measure', at: step.id, measure: id, value };
}

function outsideText(
  value: number,
  measure: PlanMeasure | undefined,
  preferred: PressureUnit,
): string | undefined {
  if (measure === undefined) return undefined;
  const { range } = limitOf(measure, preferred);
  const shown = `${shownValue(value, measure, preferred)} ${shownUnit(measure, preferred)}`;
  return words.stand.outside(shown, range);
}

function limitText(measure: PlanMeasure, preferred: PressureUnit): string {
  const { range, source } = limitOf(measure, preferred);
  return range === ''
    ? `${words.stand.unlimited} (${source}).`
    : `${words.stand.limit} ${range} (${source}).`;
}
