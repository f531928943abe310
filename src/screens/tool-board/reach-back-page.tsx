/** Which bikes a wrench in doubt concerns: judged again joint by joint, the most urgent first, ready to be called back. */

import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useStore } from 'zustand';
import {
  type BikeInDoubt,
  calledBackFor,
  type Doubt,
  doubtByKey,
  type ReachedBack,
  type WrenchTool,
} from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp, useNames } from '../app-context';
import { Button, Empty, Notice, Page, Problem, Working } from '../parts';
import { routes } from '../routes';
import { BikeRow } from './bike-in-doubt';
import { CallBackDialog } from './call-back-dialog';
import { causeText } from './doubt-text';
import { PointsTable } from './points-table';
import styles from './reach-back.module.css';
import { WithWrench } from './wrench-page';

export function ReachBackPage({ id, doubt }: { readonly id: string; readonly doubt: string }) {
  return (
    <WithWrench id={id}>
      {(tool) => {
        const found = doubtByKey(tool, doubt);
        return found === undefined ? (
          <Page title={boardWords.reachBack.title(id)}>
            <Empty>{words.app.nothingHere}</Empty>
          </Page>
        ) : (
          <ReachBackOf tool={tool} doubt={found} />
        );
      }}
    </WithWrench>
  );
}

interface ReachBackProps {
  readonly tool: WrenchTool;
  readonly doubt: Doubt;
}

function ReachBackOf({ tool, doubt }: ReachBackProps) {
  const app = useApp();
  const [, go] = useLocation();
  const { reached, problem, progress } = useReachBack(tool, doubt);
  const [calling, call] = useState<BikeInDoubt>();
  const { reachBack } = boardWords;
  const title = reachBack.title(tool.id);
  return (
    <Page
      title={title}
      beside={
        <span className={styles.tools} data-on-screen-only>
          <Button onPress={() => go(routes.wrench(tool.id))}>
            {boardWords.toolBoard.backToWrench(tool.id)}
          </Button>
          <Button tone="solid" onPress={() => app.printSheet(title)}>
            {reachBack.print}
          </Button>
        </span>
      }
    >
      <Why tool={tool} doubt={doubt} />
      <Problem>{problem}</Problem>
      {reached === undefined && problem === undefined && (
        <Working>
          {progress === undefined ? reachBack.working : reachBack.progress(...progress)}
        </Working>
      )}
      {reached !== undefined && (
        <>
          <p className={styles.count} role="status">
            {countText(reached)}
          </p>
          <Bikes
            title={reachBack.gone}
            bikes={reached.bikes.filter(({ status }) => status === 'handed-over')}
            onCall={call}
          />
          <Bikes
            title={reachBack.here}
            bikes={reached.bikes.filter(({ status }) => status !== 'handed-over')}
            onCall={call}
          />
          <DealtWith tool={tool} doubt={doubt} shown={reached.bikes} />
          {reached.bikes.length > 0 && (
            <Notice>
              <p>{reachBack.caution}</p>
            </Notice>
          )}
        </>
      )}
      {calling !== undefined && (
        <CallBackDialog doubt={doubt} bike={calling} onClose={() => call(undefined)} />
      )}
    </Page>
  );
}

/** Judged anew whenever something was noted of the wrench, and when a job of the rack has changed. */
function useReachBack(tool: WrenchTool, doubt: Doubt) {
  const app = useApp();
  const [reached, setReached] = useState<ReachedBack>();
  const [problem, setProblem] = useState<string>();
  const [progress, setProgress] = useState<readonly [number, number]>();
  const heads = useStore(app.rack, ({ rows }) => rows.map((row) => row.heads.join()).join());
  const notes = tool.history?.length ?? 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the tool is read anew when its notes or a log grew
  useEffect(() => {
    let isStopped = false;
    void app
      .reachBackFor(tool, doubt, (done, of) => {
        if (!isStopped) setProgress([done, of]);
      })
      .then((answer) => {
        if (isStopped) return;
        if (answer.ok) setReached(answer.value);
        setProblem(answer.ok ? undefined : words.refusal({ ...answer.refusal }));
      });
    return () => {
      isStopped = true;
    };
  }, [app, tool.id, doubt.key, notes, heads]);
  return { reached, problem, progress };
}

function Why({ tool, doubt }: ReachBackProps) {
  const { reachBack } = boardWords;
  const { since, until, found, reason } = doubt;
  return (
    <section className={styles.why}>
      <p>
        <strong>{causeText(doubt)}</strong> {reason !== undefined && reason !== '' && `${reason}. `}
        {reachBack.period(since.on, until?.on)}
      </p>
      {found === undefined ? (
        <p>{reachBack.notMeasured}</p>
      ) : (
        <PointsTable title={reachBack.measured} points={found} wrench={tool.wrench} />
      )}
    </section>
  );
}

function countText({ bikes, looked }: ReachedBack): string {
  const { reachBack } = boardWords;
  if (looked.joints === 0) return reachBack.noneUsed;
  if (bikes.length === 0) return reachBack.allInside(looked.bikes, looked.joints);
  const joints = bikes.reduce((sum, bike) => sum + bike.joints.length, 0);
  return reachBack.count(bikes.length, joints, looked.bikes, looked.joints);
}

interface BikesProps {
  readonly title: string;
  readonly bikes: readonly BikeInDoubt[];
  readonly onCall: (bike: BikeInDoubt) => void;
}

function Bikes({ title, bikes, onCall }: BikesProps) {
  if (bikes.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{title}</h2>
      <ol className={styles.bikes}>
        {bikes.map((bike) => (
          <BikeRow key={bike.job} bike={bike} onCall={() => onCall(bike)} />
        ))}
      </ol>
    </section>
  );
}

/** Bikes that were called back and have left the list, because their joints are tightened anew. */
function DealtWith({
  tool,
  doubt,
  shown,
}: ReachBackProps & { readonly shown: readonly BikeInDoubt[] }) {
  const { person } = useNames(undefined);
  const rack = useStore(useApp().rack, ({ rows }) => rows);
  const { reachBack } = boardWords;
  const notes = calledBackFor(tool, doubt).filter(
    ({ job }) => !shown.some((bike) => bike.job === job),
  );
  if (notes.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{reachBack.dealtWith}</h2>
      <ul className={styles.notes}>
        {notes.map(({ job, by, at, how, joints, text }) => {
          const frame = rack.find((row) => row.job === job)?.frameNumber ?? job;
          const line = how === 'record-amended' ? reachBack.dealtWithLine : reachBack.reopenedLine;
          return (
            <li key={`${job} ${at.claimed} ${joints.join()}`}>
              {line(frame, person(by), `${words.date(at.claimed)}, ${words.time(at.claimed)}`)}
              {how === 'record-amended' && ` ${reachBack.agreed(reachBack.agreedIn(text))}`}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
