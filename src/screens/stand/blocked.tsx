/** Everything left is waiting: for what, step by step, and the ways on. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { standingOfStep, stepGates, stepsOf } from '../../engine/job';
import { words } from '../../words';
import { useNames } from '../app-context';
import { ActionBar, Button, Notice, Page } from '../parts';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { HoldDialog } from './reason-dialogs';

export interface BlockedProps {
  readonly shown: ShownJob;
  readonly onChoose: (step: string) => void;
  readonly onContents: () => void;
}

export function Blocked({ shown, onChoose, onContents }: BlockedProps) {
  const { state } = shown.open;
  const [, go] = useLocation();
  const names = useNames(state.plan);
  const [isHolding, hold] = useState(false);
  const waiting = stepsOf(state).filter(
    ({ id }) => standingOfStep(state, id) !== 'done' && stepGates(state, id).length > 0,
  );
  return (
    <Page
      title={words.stand.blocked}
      bar={
        <ActionBar
          aside={[
            { label: words.app.rack, onPress: () => go(routes.rack) },
            { label: words.stand.missingContents, onPress: onContents },
          ]}
          action={{
            label: words.stand.hold,
            detail: words.stand.holdDetail,
            onPress: () => hold(true),
          }}
        />
      }
    >
      <p>{words.stand.blockedHow}</p>
      {waiting.map(({ id, title }) => (
        <Notice
          key={id}
          actions={
            <Button label={words.stand.lookAt(title)} onPress={() => onChoose(id)}>
              {words.stand.look}
            </Button>
          }
        >
          <p>
            <strong>{title}</strong>
          </p>
          {stepGates(state, id).map((gate) => (
            <p key={gate.code}>{words.refusal(gate, names)}</p>
          ))}
        </Notice>
      ))}
      {isHolding && <HoldDialog shown={shown} onClose={() => hold(false)} />}
    </Page>
  );
}
