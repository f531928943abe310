/** The way to the step taught whole, for somebody who does it for the first time. */

import { lazy, Suspense, useState } from 'react';
import { type PlanStep, reasonsForOrder } from '../../engine/plan';
import { words } from '../../words';
import { Button, Working } from '../parts';
import type { Tightening } from './use-tightening';

const ApprenticeDialog = lazy(() =>
  import('../apprentice-view').then((m) => ({ default: m.ApprenticeDialog })),
);

export interface TaughtStepProps {
  readonly step: PlanStep;
  readonly tightening: Tightening;
}

export function TaughtStep({ step, tightening }: TaughtStepProps) {
  const { plan, bike } = tightening.shown.open.state;
  const [isOpen, open] = useState(false);
  if (plan === undefined) return null;
  const measures = step.measures.map(({ name, limit }) => ({ name, source: limit.source }));
  return (
    <div>
      <Button tone="quiet" onPress={() => open(true)}>
        {words.stand.teach}
      </Button>
      {isOpen && (
        <Suspense fallback={<Working>{words.app.opening}</Working>}>
          <ApprenticeDialog
            step={{ ...step, measures }}
            reasons={reasonsForOrder(plan.steps, step.id)}
            bike={bike}
            figures={tightening.figureText === undefined ? [] : [tightening.figureText]}
            onClose={() => open(false)}
          />
        </Suspense>
      )}
    </div>
  );
}
