/** The build: the bike with the place lit and the zones on the left; the step, the number and the one action on the right. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { stepById, stepsOf, whatNow } from '../../engine/job';
import { words } from '../../words';
import { ActionBar, Page } from '../parts';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { Blocked } from './blocked';
import { Contents } from './contents';
import { StepScreen } from './step-screen';
import { ZoneList } from './zone-list';

export function BuildView({ shown }: { readonly shown: ShownJob }) {
  const { state, job } = shown.open;
  const [, go] = useLocation();
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
    return <Blocked shown={shown} onChoose={choose} onContents={() => showContents(true)} />;
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
