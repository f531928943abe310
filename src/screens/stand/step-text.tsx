/** How a step is done, with what, and what must not happen: short first, the reasons one tap away. */

import type { JobState } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import { type Names, words } from '../../words';
import { useNames } from '../app-context';
import { Facts, Notice } from '../parts';
import { FigureSources } from './figure-sources';
import { GreaseAdvice } from './grease-advice';
import styles from './stand.module.css';
import { TaughtStep } from './taught-step';
import type { Tightening } from './use-tightening';

export function StepText({
  step,
  tightening,
}: {
  readonly step: PlanStep;
  readonly tightening: Tightening;
}) {
  const names = useNames(tightening.shown.open.state.plan);
  return (
    <>
      <p className={styles.how}>{step.how}</p>
      {step.cautions.map((caution) => (
        <Notice key={caution}>
          <p>{caution}</p>
        </Notice>
      ))}
      <Facts
        facts={[
          ...leverSide(step, tightening.shown.open.state),
          ...factsOf(step, tightening, names),
        ]}
      />
      {step.joint !== undefined && (
        <Notice>
          <p>{words.torque.asCaution}</p>
        </Notice>
      )}
      <details className={styles.more}>
        <summary>{words.stand.more}</summary>
        <Facts
          facts={[
            { label: words.stand.why, value: step.why },
            ...(step.wrong === undefined ? [] : [{ label: words.stand.wrong, value: step.wrong }]),
          ]}
        />
      </details>
      <TaughtStep step={step} tightening={tightening} />
      <GreaseAdvice step={step} figure={tightening.figure} />
      <FigureSources
        shown={tightening.shown}
        step={step}
        onUse={(figure) => void tightening.enter(figure)}
      />
    </>
  );
}

/** Which lever works the front brake is the law's or the market's to say, and the step's to check. */
function leverSide({ tells }: PlanStep, { plan }: JobState) {
  if (tells !== 'front-brake-lever' || plan === undefined) return [];
  return [{ label: words.stand.leverSide, value: words.stand.leverSides[plan.frontBrakeLever] }];
}

function factsOf(step: PlanStep, { wrenchText }: Tightening, names: Names) {
  const { joint, parts, preparation, tools, wayRound, right } = step;
  return [
    ...(joint === undefined
      ? []
      : [
          {
            label: words.stand.bolts,
            value: `${joint.bolts} × ${joint.thread}, ${joint.hand === 'left' ? words.stand.leftHand : words.stand.rightHand}, ${joint.bit}`,
          },
          { label: words.stand.preparation, value: joint.preparationNote },
        ]),
    ...(joint === undefined && tools.length > 0
      ? [{ label: words.stand.tools, value: tools.join(', ') }]
      : []),
    ...(parts.length > 0
      ? [{ label: words.stand.parts, value: parts.map(names.part).join(', ') }]
      : []),
    ...(wrenchText === undefined ? [] : [{ label: words.stand.wrench, value: wrenchText }]),
    ...(preparation === undefined
      ? []
      : [{ label: words.terms.preparations[preparation.kind], value: preparation.note }]),
    ...(wayRound === undefined ? [] : [{ label: words.stand.way, value: wayRound }]),
    { label: words.stand.right, value: right },
  ];
}

/** How the step stands, where it is more than simply to do. */
export function StepNote({ state, step }: { readonly state: JobState; readonly step: PlanStep }) {
  const names = useNames(state.plan);
  const mark = state.steps[step.id];
  if (mark === undefined) return null;
  const last = mark.done.at(-1);
  if (mark.standing === 'done' && last !== undefined)
    return (
      <p className={styles.note}>
        {words.stand.doneBy(names.person(last.by), words.time(last.at.claimed))}
      </p>
    );
  return (
    <Notice>
      <p>
        {mark.standing === 'stale' &&
          words.stand.staleBecause(
            names.point(names.step(mark.disturbed?.from ?? '')),
            mark.disturbed?.reason ?? '',
          )}
        {mark.standing === 'reopened' && words.stand.reopenedBecause(mark.reason ?? '')}
        {mark.standing === 'set-aside' && words.stand.asideBecause(mark.reason ?? '')}
      </p>
    </Notice>
  );
}
