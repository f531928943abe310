/** One point of the walk: what to look for, and what was found: good, adjusted, or wrong. */

import { type ReactNode, useState } from 'react';
import { useStore } from 'zustand';
import type { RoutePoint } from '../../engine/inspection';
import { stepGates } from '../../engine/job';
import type { PlanMeasure } from '../../engine/plan';
import type { PressureUnit } from '../../engine/units';
import { words } from '../../words';
import { useApp, useNames } from '../app-context';
import { keptValue, limitOf, shownUnit } from '../measure-units';
import { ActionBar, Button, Dialog, Facts, Notice, NumberPad } from '../parts';
import type { ShownJob } from '../use-job';
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
  const [isTyping, setTyping] = useState(false);
  const [value, setValue] = useState('');
  const mark = open.state.points[point.id];
  const blocked = point.reliesOn.filter((step) => stepGates(open.state, step).length > 0);
  const measured =
    value === '' ? {} : { value: keptValue(Number(value), point.measure, preferred) };
  const look = async (verdict: 'good' | 'adjusted') => {
    if (await store.act({ kind: 'look-at-point', point: point.id, verdict, ...measured })) onDone();
  };
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
              ...(point.measure === undefined
                ? []
                : [{ label: words.walk.limit, value: limitText(point.measure, preferred) }]),
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
          <div className={styles.others}>
            <Button onPress={() => void look('adjusted')}>{words.walk.adjusted}</Button>
            <Button onPress={() => setWrong(true)}>{words.walk.wrong}</Button>
            {point.measure !== undefined && (
              <Button onPress={() => setTyping(true)}>
                {value === ''
                  ? words.stand.enterValue
                  : `${value} ${shownUnit(point.measure, preferred)}`}
              </Button>
            )}
          </div>
        </div>
      </main>
      <ActionBar
        aside={onBack === undefined ? [] : [{ label: words.walk.back, onPress: onBack }]}
        action={{
          label: words.walk.good,
          detail: following,
          busy,
          onPress: () => void look('good'),
        }}
      />
      {isTyping && point.measure !== undefined && (
        <Dialog
          title={point.measure.name}
          closeLabel={words.app.close}
          onClose={() => setTyping(false)}
        >
          <p className={styles.value}>
            {value === '' ? '–' : value} {shownUnit(point.measure, preferred)}
          </p>
          <p>{point.measure.how}</p>
          <NumberPad
            label={point.measure.name}
            value={value}
            onChange={setValue}
            point="."
            eraseLabel={words.app.erase}
            maxLength={6}
          />
        </Dialog>
      )}
      {isWrong && (
        <FindingDialog
          shown={shown}
          severity={point.severity}
          onClose={() => setWrong(false)}
          onFinding={async (finding) => {
            const kept = await store.act({
              kind: 'look-at-point',
              point: point.id,
              verdict: 'wrong',
              ...measured,
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

function limitText(measure: PlanMeasure, preferred: PressureUnit): string {
  const { range, source } = limitOf(measure, preferred);
  return range === '' ? source : `${range} (${source})`;
}
