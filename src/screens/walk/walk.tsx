/** The M check: the walk round the bike from front to rear, point by point, drawn on the bike. */

import { useState } from 'react';
import { useLocation } from 'wouter';
import { type PointState, WalkDrawing } from '../../drawing';
import type { RoutePoint } from '../../engine/inspection';
import { isPointSettled, type JobState, pointsOf, unfinishedSteps } from '../../engine/job';
import { words } from '../../words';
import { useNames } from '../app-context';
import { JobFrame } from '../job-frame';
import { JobHead } from '../job-head';
import { ActionBar, Page } from '../parts';
import { routes } from '../routes';
import type { ShownJob } from '../use-job';
import { Findings } from './findings';
import { PointPanel } from './point-panel';
import styles from './walk.module.css';

export function Walk({ job }: { readonly job: string }) {
  return (
    <JobFrame job={job}>
      {(shown) => (
        <>
          <JobHead state={shown.open.state} />
          <WalkOf shown={shown} />
        </>
      )}
    </JobFrame>
  );
}

function WalkOf({ shown }: { readonly shown: ShownJob }) {
  const { state, job } = shown.open;
  const [, go] = useLocation();
  const names = useNames(state.plan);
  const [chosen, choose] = useState<string>();
  const points = pointsOf(state);
  const left = unfinishedSteps(state);
  const next = points.find(({ id }) => !isPointSettled(state, id));
  const point = points.find(({ id }) => id === chosen) ?? next;
  if (left.length > 0 && chosen === undefined && next !== undefined)
    return (
      <Page
        title={words.walk.notYet}
        bar={
          <ActionBar action={{ label: words.walk.toStand, onPress: () => go(routes.stand(job)) }} />
        }
      >
        <p>{words.refusal({ code: 'steps-unfinished', steps: left.map(({ id }) => id) }, names)}</p>
        <Findings shown={shown} />
      </Page>
    );
  if (point === undefined)
    return (
      <Page
        title={words.walk.done}
        bar={
          <ActionBar
            aside={[
              { label: words.walk.toStand, onPress: () => go(routes.stand(job)) },
              { label: words.walk.back, onPress: () => choose(points.at(-1)?.id) },
            ]}
            action={{
              label: words.sign.builtTitle,
              detail: words.sign.builtDetail,
              onPress: () => go(routes.check(job)),
            }}
          />
        }
      >
        <div className={styles.whole}>
          <Drawn state={state} points={points} now={undefined} />
        </div>
        <Findings shown={shown} />
      </Page>
    );
  return (
    <PointScreen key={point.id} shown={shown} points={points} point={point} onChoose={choose} />
  );
}

interface PointScreenProps {
  readonly shown: ShownJob;
  readonly points: readonly RoutePoint[];
  readonly point: RoutePoint;
  readonly onChoose: (point: string | undefined) => void;
}

function PointScreen({ shown, points, point, onChoose }: PointScreenProps) {
  const { state, busy } = shown.open;
  const index = points.indexOf(point);
  const following = points.find(
    ({ id }, position) => position > index && !isPointSettled(state, id),
  );
  return (
    <PointPanel
      shown={shown}
      point={point}
      title={words.walk.pointOf(index + 1, points.length)}
      drawing={<Drawn state={state} points={points} now={point.id} />}
      busy={busy}
      following={
        following === undefined
          ? words.walk.lastPoint
          : words.walk.next(following.name.toLowerCase())
      }
      onBack={index > 0 ? () => onChoose(points[index - 1]?.id) : undefined}
      onDone={() => onChoose(undefined)}
    />
  );
}

function Drawn({
  state,
  points,
  now,
}: {
  readonly state: JobState;
  readonly points: readonly RoutePoint[];
  readonly now: string | undefined;
}) {
  if (state.bike === undefined) return null;
  return (
    <WalkDrawing
      bike={state.bike}
      title={words.walk.title}
      points={points.map(({ id, place }, index) => ({
        id,
        place,
        number: index + 1,
        state: id === now ? 'now' : stateOf(state, id),
      }))}
    />
  );
}

function stateOf(state: JobState, point: string): PointState {
  const mark = state.points[point];
  if (mark === undefined) return 'todo';
  return mark.stale ? 'stale' : mark.verdict;
}
