/** A measured value with its limit: where to aim, and the likely values, are one tap; any other comes from the pad. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { readyValues } from '../../engine/inspection';
import { type Asked, missingMeasures, type NextPass } from '../../engine/job';
import type { PlanMeasure, PlanStep } from '../../engine/plan';
import type { PressureUnit } from '../../engine/units';
import { words } from '../../words';
import { useApp } from '../app-context';
import { keptValue, limitText, shownLimit, shownUnit, shownValue } from '../measure-units';
import { Button, Notice, NumberPad } from '../parts';
import type { ShownJob } from '../use-job';
import { ReadyValues, ValueDialog } from '../value-dialog';
import styles from './torque-panel.module.css';

export interface Measuring {
  readonly measure: PlanMeasure | undefined;
  readonly preferred: PressureUnit;
  /** Where to aim, as shown; empty where nobody can say. */
  readonly suggested: string;
  /** Where only the part knows the limit, nothing can be offered: the pad stands in the panel itself. */
  readonly isOnPad: boolean;
  readonly typed: string;
  readonly type: (text: string) => void;
  readonly busy: boolean;
  readonly isTyping: boolean;
  readonly startTyping: (typing: boolean) => void;
  readonly record: (value: string) => void;
  /** The last value taken, when it lies outside the limit. */
  readonly outside: string | undefined;
  /** On a joint the measure comes before its last round; by itself it is the step. */
  readonly isDue: (next: NextPass | undefined) => boolean;
  readonly action: (following: string) => {
    readonly label: string;
    readonly detail: string;
    readonly disabled?: boolean;
    readonly onPress: () => void;
  };
}

/** The step's measure, shown in the unit the stand prefers, kept in its own. */
export function useMeasures(
  { store, open }: ShownJob,
  step: PlanStep,
  onDone: () => void,
): Measuring {
  const preferred = useStore(useApp().session, ({ preferences }) => preferences.pressureUnit);
  const [measure] = step.measures;
  const suggested =
    measure?.suggested === undefined ? '' : shownValue(measure.suggested, measure, preferred);
  const [isTyping, startTyping] = useState(false);
  const [typed, type] = useState('');
  const isOnPad =
    measure !== undefined &&
    suggested === '' &&
    readyValues(shownLimit(measure, preferred)).length === 0;
  const mark = measure && open.state.measures[`${step.id}.${measure.id}`];
  const isOutside = mark?.judged === 'outside' && !mark.stale;
  const record = async (text: string) => {
    startTyping(false);
    const value = keptValue(Number(text), measure, preferred);
    if ((await store.act(recorded(step, measure, value))) && step.joint === undefined) onDone();
  };
  return {
    measure,
    preferred,
    suggested,
    isOnPad,
    typed,
    type,
    busy: open.busy,
    isTyping,
    startTyping,
    record: (text) => void record(text),
    outside: isOutside ? outsideText(mark.value, measure, preferred) : undefined,
    isDue: (next) => {
      if (step.joint === undefined) return step.measures.length > 0;
      const isLastRound = next !== undefined && next.pass.pass === next.of;
      return isLastRound && missingMeasures(open.state, step).length > 0;
    },
    action: (following) => {
      const value = isOnPad ? typed : suggested;
      return measure === undefined || (value === '' && !isOnPad)
        ? {
            label: words.stand.enterValue,
            detail: measure?.name ?? '',
            onPress: () => startTyping(true),
          }
        : {
            label: isOnPad
              ? words.stand.recordValue(
                  value === '' ? '' : `${value} ${shownUnit(measure, preferred)}`,
                )
              : words.stand.gaugeShows(`${value} ${shownUnit(measure, preferred)}`),
            detail: value === '' ? measure.name : following,
            disabled: value === '' || !Number.isFinite(Number(value)),
            onPress: () => void record(value),
          };
    },
  };
}

export function MeasurePanel({ measuring }: { readonly measuring: Measuring }) {
  const { measure, preferred, suggested, outside, isTyping, startTyping, record } = measuring;
  if (measure === undefined) return null;
  return (
    <section className={styles.panel}>
      <div className={styles.number}>
        {outside !== undefined && (
          <Notice as="alert">
            <p>{outside}</p>
          </Notice>
        )}
        {suggested === '' ? (
          <h2 className={styles.ask}>{words.stand.measureAsk(shownUnit(measure, preferred))}</h2>
        ) : (
          <p className={styles.value}>
            {suggested}
            <span className={styles.unit}> {shownUnit(measure, preferred)}</span>
          </p>
        )}
        <p className={styles.explained} id={howId}>
          {measure.how} {limitText(measure, preferred)}
        </p>
        {measuring.isOnPad ? (
          <NumberPad
            label={measure.name}
            value={measuring.typed}
            onChange={measuring.type}
            point="."
            eraseLabel={words.app.erase}
            maxLength={6}
          >
            <p className={styles.value}>
              {measuring.typed === '' ? '–' : measuring.typed}
              <span className={styles.unit}> {shownUnit(measure, preferred)}</span>
            </p>
          </NumberPad>
        ) : suggested === '' ? (
          <ReadyValues
            measure={measure}
            preferred={preferred}
            labelledBy={howId}
            busy={measuring.busy}
            onValue={record}
            onOther={() => startTyping(true)}
          />
        ) : (
          <div className={styles.change}>
            <Button tone="quiet" onPress={() => startTyping(true)}>
              {words.stand.other}
            </Button>
          </div>
        )}
      </div>
      {isTyping && (
        <ValueDialog
          measure={measure}
          preferred={preferred}
          onClose={() => startTyping(false)}
          onValue={record}
        />
      )}
    </section>
  );
}

const howId = 'how-it-is-measured';

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
  const written = (one: number) =>
    words.writing.quantity(shownValue(one, measure, preferred), shownUnit(measure, preferred));
  const missed = words.writing.missedLimit(value, measure.limit, written);
  return missed && words.stand.outside(missed);
}
