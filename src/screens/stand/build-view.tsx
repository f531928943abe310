/** The build: the bike with the place lit and the zones on the left; the step, the number and the one action on the right. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { stepById, stepGates, stepsOf, whatNow } from '../../engine/job';
import { words } from '../../words';
import { useNames } from '../app-context';
import { ActionBar, Notice, Page } from '../parts';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { Contents } from './contents';
import { StepScreen } from './step-screen';
import { ZoneList } from './zone-list';

export function BuildView({ shown }: { readonly shown: ShownJob }) {
  const { state, job } = shown.open;
  const [, go] = useLocation();
  const names = useNames(state.plan);
  const [chosen, choose] = useState<string>();
  const [atContents, showContents] = useState(false);
  const now = whatNow(state);
  if (atContents)
    return (
      <Contents shown={shown} title={words.contents.title} onBack={() => showContents(false)} />
    );
  const step = stepById(state, chosen ?? (now.what === 'step' ? now.step : ''));
  if (step !== undefined)
    return (
      <StepScreen
        key={step.id}
        shown={shown}
        step={step}
        onChoose={choose}
        onContents={() => showContents(true)}
      />
    );
  if (now.what === 'blocked')
    return (
      <Page
        title={words.stand.blocked}
        bar={
          <ActionBar
            aside={[{ label: words.app.rack, onPress: () => go(routes.rack) }]}
            action={{ label: words.stand.missingContents, onPress: () => showContents(true) }}
          />
        }
      >
        {stepsOf(state)
          .filter(
            ({ id }) => stepGates(state, id).length > 0 && state.steps[id]?.standing !== 'done',
          )
          .map(({ id, title }) => (
            <Notice key={id}>
              <p>
                <strong>{title}</strong>
              </p>
              {stepGates(state, id).map((gate) => (
                <p key={gate.code}>{words.refusal(gate, names)}</p>
              ))}
            </Notice>
          ))}
      </Page>
    );
  return (
    <Page
      title={words.stand.finished}
      bar={
        <ActionBar
          aside={[{ label: words.stand.back, onPress: () => choose(stepsOf(state).at(-1)?.id) }]}
          action={{ label: words.stand.startWalk, onPress: () => go(routes.walk(job)) }}
        />
      }
    >
      <p>{words.walk.caution}</p>
      <ZoneList
        job={job}
        state={state}
        current={undefined}
        onChoose={choose}
        onContents={() => showContents(true)}
      />
    </Page>
  );
}
