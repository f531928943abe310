/** One wrench: what it is, how its calibration stands, what happened to it, and what can be done about it. */

import { type ReactNode, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from 'zustand';
import { doubtsOf, type WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Empty, Facts, Notice, Page, Working } from '../parts';
import { routes } from '../routes';
import { ConditionDialog } from './condition-dialog';
import { OperationsBar } from './operations-bar';
import { PointsTable } from './points-table';
import { DoubtRow } from './tool-board';
import { WrenchForm } from './wrench-form';
import { WrenchHistory } from './wrench-history';
import styles from './wrench-page.module.css';
import { rangeText, standingOf, toleranceText } from './wrench-standing';

export function WrenchPage({ id }: { readonly id: string }) {
  return <WithWrench id={id}>{(tool) => <WrenchOf tool={tool} />}</WithWrench>;
}

interface WithWrenchProps {
  readonly id: string;
  readonly children: (tool: WrenchTool) => ReactNode;
}

/** Waits for the board, and says so when it has no such wrench. */
export function WithWrench({ id, children }: WithWrenchProps) {
  const { rows, loaded } = useStore(useApp().tools);
  const tool = rows.find((row) => row.id === id);
  if (tool?.kind === 'wrench') return children(tool);
  if (!loaded)
    return (
      <Page title={words.app.opening}>
        <Working>{words.app.opening}</Working>
      </Page>
    );
  return (
    <Page title={boardWords.toolBoard.title}>
      <Empty action={<Link href={routes.toolBoard}>{boardWords.toolBoard.back}</Link>}>
        {words.refusal({ code: 'tool-missing' })}
      </Empty>
    </Page>
  );
}

function WrenchOf({ tool }: { readonly tool: WrenchTool }) {
  const [, go] = useLocation();
  const [asking, ask] = useState<'condition' | 'description'>();
  const { wrench } = tool;
  const { isFit, isRetired, first, more } = standingOf(tool, useApp().clock.today());
  const doubts = doubtsOf(tool);
  return (
    <Page
      title={boardWords.toolBoard.wrenchTitle(wrench.id, wrench.name)}
      beside={<Button onPress={() => go(routes.toolBoard)}>{boardWords.toolBoard.back}</Button>}
    >
      <Notice as={isFit || isRetired ? 'status' : 'caution'}>
        <p>
          <strong>{first}.</strong> {more.map((text) => `${text}.`).join(' ')}
        </p>
      </Notice>
      <div className={styles.do}>
        <Button tone="solid" onPress={() => go(routes.calibration(wrench.id))}>
          {boardWords.toolBoard.enterCalibration}
        </Button>
        <Button onPress={() => ask('condition')}>{boardWords.toolBoard.changeCondition}</Button>
        <Button onPress={() => ask('description')}>{boardWords.toolBoard.correct}</Button>
      </div>
      {doubts.length > 0 && (
        <section className={styles.section}>
          <h2>{boardWords.toolBoard.toLookInto}</h2>
          <ul className={styles.list}>
            {[...doubts].reverse().map((doubt) => (
              <DoubtRow key={doubt.key} doubt={doubt} />
            ))}
          </ul>
        </section>
      )}
      <WrenchFacts tool={tool} />
      <WrenchHistory tool={tool} />
      {asking === 'condition' && <ConditionDialog tool={tool} onClose={() => ask(undefined)} />}
      {asking === 'description' && <WrenchForm wrench={wrench} onClose={() => ask(undefined)} />}
    </Page>
  );
}

function WrenchFacts({ tool }: { readonly tool: WrenchTool }) {
  const { wrench } = tool;
  const { toolBoard } = boardWords;
  const { certificate, kind, increment, unit, lowest, highest } = wrench;
  const step =
    lowest === highest ? '' : `, ${toolBoard.step(words.writing.figure(increment, 3), unit)}`;
  return (
    <section className={styles.section}>
      <Facts
        facts={[
          ...(kind === undefined
            ? []
            : [{ label: toolBoard.kind, value: toolBoard.kindNames[kind] }]),
          { label: toolBoard.range, value: `${rangeText(wrench)}${step}` },
          {
            label: toolBoard.tolerance,
            value: `${toleranceText(wrench)} (${toolBoard.type} ${wrench.type}, ${toolBoard.class.toLowerCase()} ${wrench.class})`,
          },
          { label: toolBoard.calibrated, value: calibratedText(tool) },
          { label: toolBoard.due, value: words.date(wrench.dueOn) },
          {
            label: toolBoard.operationsLabel,
            value: <OperationsBar used={wrench.operations ?? 0} />,
          },
        ]}
      />
      {certificate?.points !== undefined && (
        <PointsTable title={toolBoard.left} points={certificate.points} wrench={wrench} />
      )}
    </section>
  );
}

function calibratedText({ wrench }: WrenchTool): string {
  const reference = wrench.certificate?.reference;
  const date = words.date(wrench.calibratedOn);
  return reference === undefined
    ? date
    : `${date}, ${boardWords.toolBoard.noteReference(reference)}`;
}
