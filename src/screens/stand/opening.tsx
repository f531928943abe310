/** A boxed bike: what it is, and the one action that freezes its plan. */

import { useState } from 'react';
import { BikeDrawing } from '../../drawing';
import { words } from '../../words';
import { useApp, useNames } from '../app-context';
import { ActionBar, Facts, Notice, Page } from '../parts';
import type { ShownJob } from '../use-job';
import { DescribeDialog } from './describe-dialog';
import styles from './stand.module.css';

export function Opening({ shown }: { readonly shown: ShownJob }) {
  const app = useApp();
  const { state, job } = shown.open;
  const names = useNames(state.plan);
  const [busy, setBusy] = useState(false);
  const [isCorrecting, correct] = useState(false);
  const [refused, setRefused] = useState<{ code: string }>();
  const { bike } = state;
  if (bike === undefined) return null;
  const start = async () => {
    setBusy(true);
    const started = await app.startJob(job);
    setBusy(false);
    setRefused(started.ok ? undefined : started.refusal);
  };
  return (
    <Page
      title={`${bike.make} ${bike.model}`}
      bar={
        <ActionBar
          aside={[{ label: words.opening.correct, onPress: () => correct(true) }]}
          action={{
            label: words.opening.open,
            detail: busy ? words.opening.working : words.opening.openDetail,
            busy,
            onPress: () => void start(),
          }}
        />
      }
    >
      {refused !== undefined && (
        <Notice as="alert">
          <p>{words.refusal(refused, names)}</p>
        </Notice>
      )}
      <div className={styles.opening}>
        <BikeDrawing bike={bike} title={`${bike.make} ${bike.model}`} />
        <Facts
          facts={[
            { label: words.goodsIn.frameNumber, value: bike.frameNumber },
            { label: words.opening.due, value: dueText(state.due) },
            { label: words.goodsIn.axle, value: both(bike.front.axle, bike.rear.axle) },
            { label: words.goodsIn.brake, value: both(bike.front.brake, bike.rear.brake) },
            { label: words.goodsIn.steering, value: `${bike.steering.stem}, ${bike.steering.bar}` },
            { label: words.goodsIn.gears, value: `${bike.gears.kind}, ${bike.gears.speeds}` },
            { label: words.goodsIn.tyre, value: both(bike.front.tyre, bike.rear.tyre) },
            ...(state.received?.cartonDamage === undefined
              ? []
              : [{ label: words.opening.cartonDamage, value: state.received.cartonDamage }]),
          ]}
        />
      </div>
      <Notice>
        <p>{words.opening.caution}</p>
      </Notice>
      {isCorrecting && <DescribeDialog shown={shown} bike={bike} onClose={() => correct(false)} />}
    </Page>
  );
}

function both(front: string, rear: string): string {
  const plain = (answer: string) => answer.replaceAll(/(?<=[a-z])-(?=[a-z])/g, ' ');
  return front === rear
    ? plain(front)
    : `${words.sheet.front} ${plain(front)}, ${words.sheet.rear} ${plain(rear)}`;
}

function dueText(due: string | undefined): string {
  return due === undefined ? words.opening.noDue : `${words.day(due)} ${words.time(due)}`;
}
