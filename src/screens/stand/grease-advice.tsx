/** Why grease matters, folded away: two lines of advice and the bolt drawn out, or why nothing is computed. */

import { useState } from 'react';
import { ClampForce } from '../../drawing';
import { type GreaseAdvice as Advice, greaseAdvice, type PlanStep } from '../../engine/plan';
import { type Figure, type PropertyClass, propertyClasses } from '../../engine/torque';
import { jointWords } from '../../words/joint';
import { Pick } from '../parts';
import styles from './joint-aside.module.css';

export interface GreaseAdviceProps {
  readonly step: PlanStep;
  /** What the joint is tightened to, once somebody has said so. */
  readonly figure: Figure | undefined;
}

export function GreaseAdvice({ step, figure }: GreaseAdviceProps) {
  const [stamp, setStamp] = useState<PropertyClass | 'none'>();
  const { joint } = step;
  if (joint === undefined) return null;
  const text = jointWords.grease;
  const propertyClass = stamp === 'none' ? undefined : stamp;
  const advice = figure && greaseAdvice({ joint, figure, propertyClass });
  const isAsking = advice?.ok === true || advice?.refusal.code === 'bolt-stamp-missing';
  return (
    <details className={styles.aside}>
      <summary>{text.title}</summary>
      <div className={styles.text}>
        {isAsking && (
          <Pick
            label={text.stamp}
            prompt={text.prompt}
            value={stamp ?? ''}
            onChange={setStamp}
            options={[
              ...propertyClasses.map((value) => ({ value, label: value })),
              { value: 'none', label: text.noStamp },
            ]}
          />
        )}
        {advice === undefined && <p>{text.noFigure}</p>}
        {advice?.ok === false && <p>{text.nothing(advice.refusal)}</p>}
        {advice?.ok === true && (
          <Computed advice={advice.value} thread={joint.thread} stamp={propertyClass ?? ''} />
        )}
      </div>
    </details>
  );
}

interface ComputedProps {
  readonly advice: Advice;
  readonly thread: string;
  readonly stamp: string;
}

function Computed({ advice: { dry, greased, gain, torque }, thread, stamp }: ComputedProps) {
  const text = jointWords.grease;
  return (
    <>
      <p>{text.gain(torque, thread, gain)}</p>
      <p>{text.share(stamp, greased, dry)}</p>
      {greased.highShare > 1 && <p>{text.over}</p>}
      <ClampForce
        rows={[
          { label: text.dry, low: dry.lowShare, high: dry.highShare },
          { label: text.greased, low: greased.lowShare, high: greased.highShare },
        ]}
        limitLabel={text.limit}
        title={text.picture(dry, greased)}
      />
      <p className={styles.soft}>{text.advice}</p>
    </>
  );
}
