/** One step, large: what it is on the right, where it is on the left, and the one action that records it. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { BikeDrawing } from '../../drawing';
import { standingOfStep, stepGates, stepsOf } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import { words } from '../../words';
import { useNames } from '../app-context';
import { ActionBar, Notice } from '../parts';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { MeasurePanel, useMeasures } from './measure-panel';
import { nextTitle } from './next-title';
import { HoldDialog, ReopenDialog, SetAsideDialog } from './reason-dialogs';
import styles from './stand.module.css';
import { StepNote, StepText } from './step-text';
import { StepsDialog } from './steps-dialog';
import { TorqueDialogs, TorquePanel } from './torque-panel';
import { useTightening } from './use-tightening';
import { ZoneList } from './zone-list';

export interface StepScreenProps {
  readonly shown: ShownJob;
  readonly step: PlanStep;
  readonly onChoose: (step: string | undefined) => void;
  readonly onContents: () => void;
}

type Asking = 'set-aside' | 'reopen' | 'hold' | 'steps' | undefined;

export function StepScreen({ shown, step, onChoose, onContents }: StepScreenProps) {
  const { store, open } = shown;
  const { state, job, busy } = open;
  const [, go] = useLocation();
  const names = useNames(state.plan);
  const [asking, ask] = useState<Asking>();
  const tightening = useTightening(shown, step);
  const measuring = useMeasures(shown, step, () => onChoose(undefined));
  const steps = stepsOf(state);
  const index = steps.findIndex(({ id }) => id === step.id);
  const standing = standingOfStep(state, step.id);
  const gates = stepGates(state, step.id);
  const isDone = standing === 'done';
  const following = nextTitle(shown, step);
  const act = async (asked: Parameters<typeof store.act>[0]) => {
    if (await store.act(asked)) onChoose(undefined);
  };

  const action = (() => {
    if (isDone) return { label: words.stand.current, onPress: () => onChoose(undefined) };
    if (gates.length > 0) return undefined;
    if (measuring.isDue(tightening.next)) return measuring.action(following);
    if (step.joint !== undefined) return tightening.action(following, () => onChoose(undefined));
    return {
      label:
        standing === 'to-do' || standing === 'set-aside'
          ? words.stand.done
          : words.stand.showsAgain,
      detail: following,
      onPress: () => void act({ kind: 'do-step', step: step.id }),
    };
  })();

  return (
    <>
      <main className={styles.stand}>
        <div className={styles.where}>
          <div className={styles.drawing}>
            {state.bike !== undefined && (
              <BikeDrawing
                bike={state.bike}
                lit={{ place: step.place, ...(step.side && { side: step.side }) }}
                title={words.terms.zoneNames[step.zone]}
              />
            )}
          </div>
          <div className={styles.zones}>
            <ZoneList
              job={job}
              state={state}
              current={step.zone}
              onChoose={onChoose}
              onContents={onContents}
            />
          </div>
        </div>
        <div className={styles.what}>
          <div className={styles.told}>
            <button type="button" className={styles.place} onClick={() => ask('steps')}>
              {words.stand.stepOf(words.terms.zoneNames[step.zone], index + 1, steps.length)}
            </button>
            <h1>{step.title}</h1>
            <StepNote state={state} step={step} />
            <StepText step={step} tightening={tightening} />
          </div>
          {!isDone && measuring.isDue(tightening.next) ? (
            <MeasurePanel measuring={measuring} />
          ) : (
            step.joint !== undefined && <TorquePanel step={step} tightening={tightening} />
          )}
        </div>
      </main>
      <ActionBar
        aside={[
          {
            label: words.stand.back,
            disabled: index <= 0,
            onPress: () => onChoose(steps[index - 1]?.id),
          },
          isDone || standing === 'stale'
            ? { label: words.stand.reopen, onPress: () => ask('reopen') }
            : { label: words.stand.setAside, onPress: () => ask('set-aside') },
          { label: words.stand.hold, onPress: () => ask('hold') },
        ]}
        action={action && { busy, ...action }}
      >
        <Notice>
          {gates.map((gate) => (
            <p key={gate.code}>{words.refusal(gate, names)}</p>
          ))}
        </Notice>
      </ActionBar>
      <TorqueDialogs step={step} tightening={tightening} onBoard={() => go(routes.toolBoard)} />
      {asking === 'set-aside' && (
        <SetAsideDialog
          shown={shown}
          step={step}
          onClose={() => ask(undefined)}
          onDone={() => onChoose(undefined)}
        />
      )}
      {asking === 'reopen' && (
        <ReopenDialog shown={shown} step={step} onClose={() => ask(undefined)} />
      )}
      {asking === 'steps' && (
        <StepsDialog
          state={state}
          current={step}
          onChoose={(chosen) => {
            ask(undefined);
            onChoose(chosen);
          }}
          onClose={() => ask(undefined)}
        />
      )}
      {asking === 'hold' && <HoldDialog shown={shown} onClose={() => ask(undefined)} />}
    </>
  );
}
