/** One point of the walk: what to look for, and what was found: good, adjusted, or wrong. */

import { type ReactNode, useState } from 'react';
import { useStore } from 'zustand';
import { judgeMeasure, type RoutePoint } from '../../engine/inspection';
import { latestMeasure, stepGates } from '../../engine/job';
import type { PlanMeasure } from '../../engine/plan';
import { words } from '../../words';
import { useApp, useNames } from '../app-context';
import { keptValue, limitText, shownUnit, shownValue } from '../measure-units';
import { ActionBar, Facts, Notice } from '../parts';
import type { ShownJob } from '../use-job';
import { ReadyValues, ValueDialog } from '../value-dialog';
import { FindingDialog } from './finding-dialog';
import styles from './walk.module.css';

export interface PointPanelProps {
  readonly shown: ShownJob;
  readonly point: RoutePoint;
  readonly title: string;
  readonly drawing: ReactNode;
  readonly following: string;
  readonly busy: boolean;
  readonly onBack: (() => void) | undefined;
  readonly onDone: () => void;
}

export function PointPanel(props: PointPanelProps) {
  const { shown, point, title, drawing, following, busy, onBack, onDone } = props;
  const app = useApp();
  const preferred = useStore(app.session, ({ preferences }) => preferences.pressureUnit);
  const { store, open } = shown;
  const names = useNames(open.state.plan);
  const [isWrong, setWrong] = useState(false);
  /** Which verdict waits for a value from the pad. */
  const [typingFor, typeFor] = useState<Verdict>();
  const [outside, setOutside] = useState<number>();
  const mark = open.state.points[point.id];
  const blocked = point.reliesOn.filter((step) => stepGates(open.state, step).length > 0);
  const measure = hasLimit(point.measure) ? point.measure : undefined;
  const look = async (verdict: Verdict, value?: number) => {
    const asked = { kind: 'look-at-point', point: point.id, verdict } as const;
    if (await store.act({ ...asked, ...(value !== undefined && { value }) })) onDone();
  };
  /** A value outside its limit is something wrong, and is written down as that. */
  const lookWith = (verdict: Verdict, text: string) => {
    typeFor(undefined);
    const value = keptValue(Number(text), measure, preferred);
    if (measure === undefined || judgeMeasure(measure.limit, value) !== 'outside')
      return void look(verdict, value);
    setOutside(value);
    setWrong(true);
  };
  const last = measure && latestMeasure(open.state, measure.id);
  return (
    <>
      <main className={styles.walk}>
        <div className={styles.drawing}>{drawing}</div>
        <div className={styles.what}>
          <p className={styles.count}>{title}</p>
          <h1>{point.name}</h1>
          <p className={styles.look}>{point.look}</p>
          <Facts
            facts={[
              { label: words.walk.right, value: point.right },
              ...(point.measure === undefined || measure !== undefined
                ? []
                : [{ label: words.walk.limit, value: point.measure.limit.source }]),
            ]}
          />
          {point.caution !== undefined && (
            <Notice>
              <p>{point.caution}</p>
            </Notice>
          )}
          {mark !== undefined && (
            <p className={styles.count}>
              {mark.stale
                ? words.stand.staleBecause(
                    names.point(names.step(mark.disturbed?.from ?? '')),
                    mark.disturbed?.reason ?? '',
                  )
                : `${words.terms.verdicts[mark.verdict]}, ${names.person(mark.by)}`}
            </p>
          )}
          {blocked.length > 0 && (
            <Notice>
              <p>{words.refusal({ code: 'point-waits-for-steps', steps: blocked }, names)}</p>
            </Notice>
          )}
          {measure !== undefined && (
            <div className={styles.measured}>
              <p id={howId}>
                <strong>{words.stand.measureAsk(shownUnit(measure, preferred))}</strong>{' '}
                {measure.how} {limitText(measure, preferred)}
                {last !== undefined &&
                  ` ${words.walk.lastMeasured(`${shownValue(last.value, measure, preferred)} ${shownUnit(measure, preferred)}`)}`}
              </p>
              <ReadyValues
                measure={measure}
                preferred={preferred}
                labelledBy={howId}
                busy={busy}
                onValue={(text) => lookWith('good', text)}
                onOther={() => typeFor('good')}
              />
            </div>
          )}
        </div>
      </main>
      <ActionBar
        aside={[
          { label: words.walk.back, disabled: onBack === undefined, onPress: () => onBack?.() },
          {
            label: words.walk.adjusted,
            onPress: () => (measure === undefined ? void look('adjusted') : typeFor('adjusted')),
          },
          { label: words.walk.wrong, onPress: () => setWrong(true) },
        ]}
        action={
          measure === undefined
            ? { label: words.walk.good, detail: following, busy, onPress: () => void look('good') }
            : {
                label: words.stand.enterValue,
                detail: measure.name,
                busy,
                onPress: () => typeFor('good'),
              }
        }
      />
      {typingFor !== undefined && measure !== undefined && (
        <ValueDialog
          measure={measure}
          preferred={preferred}
          onClose={() => typeFor(undefined)}
          onValue={(text) => lookWith(typingFor, text)}
        />
      )}
      {isWrong && (
        <FindingDialog
          shown={shown}
          severity={point.severity}
          value={
            outside === undefined || measure === undefined
              ? undefined
              : `${measure.name}: ${shownValue(outside, measure, preferred)} ${shownUnit(measure, preferred)}`
          }
          onClose={() => {
            setWrong(false);
            setOutside(undefined);
          }}
          onFinding={async (finding) => {
            const kept = await store.act({
              kind: 'look-at-point',
              point: point.id,
              verdict: 'wrong',
              ...(outside !== undefined && { value: outside }),
              finding: { ...finding, finding: app.newId() },
            });
            setWrong(false);
            if (kept) onDone();
          }}
        />
      )}
    </>
  );
}

type Verdict = 'good' | 'adjusted';

const howId = 'how-it-is-measured';

function hasLimit(measure: PlanMeasure | undefined): measure is PlanMeasure {
  return measure?.limit.min !== undefined || measure?.limit.max !== undefined;
}
