/** The tool board: the wrenches and adapters the shop owns, what may not be used first, and what has to be looked into. */

import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { useStore } from 'zustand';
import { type Doubt, daysBetween, doubtsOf, type Tool, type WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, classes, Empty, Notice, Page } from '../parts';
import { routes } from '../routes';
import { AdapterForm } from './adapter-form';
import { causeText } from './doubt-text';
import { OperationsBar } from './operations-bar';
import styles from './tool-board.module.css';
import { WrenchForm } from './wrench-form';
import { rangeText, standingOf, toleranceText } from './wrench-standing';

type AdapterTool = Extract<Tool, { readonly kind: 'adapter' }>;

export function ToolBoard() {
  const app = useApp();
  const { rows: tools, loaded } = useStore(app.tools);
  const today = app.clock.today();
  const [editing, edit] = useState<'wrench' | AdapterTool | 'adapter'>();
  const wrenches = tools.flatMap((tool) => (tool.kind === 'wrench' ? [tool] : []));
  const adapters = tools.flatMap((tool) => (tool.kind === 'adapter' ? [tool] : []));
  const standing = wrenches.map((tool) => ({ tool, ...standingOf(tool, today) }));
  const of = (isWanted: (one: (typeof standing)[number]) => boolean) =>
    standing.filter(isWanted).map(({ tool }) => tool);
  const add = (
    <Button tone="solid" onPress={() => edit('wrench')}>
      {boardWords.toolBoard.add}
    </Button>
  );
  return (
    <Page title={boardWords.toolBoard.title} beside={add}>
      <Doubts wrenches={wrenches} today={today} />
      {loaded && wrenches.length === 0 && <Empty action={add}>{boardWords.toolBoard.empty}</Empty>}
      <Wrenches
        title={boardWords.toolBoard.unfit}
        tools={of(({ isFit, isRetired }) => !isFit && !isRetired)}
      >
        <Notice>
          <p>{boardWords.toolBoard.caution}</p>
        </Notice>
      </Wrenches>
      <Wrenches title={boardWords.toolBoard.wrenches} tools={of(({ isFit }) => isFit)} />
      <section className={styles.section}>
        <div className={styles.head}>
          <h2>{boardWords.toolBoard.adapters}</h2>
          <Button onPress={() => edit('adapter')}>{boardWords.toolBoard.addAdapter}</Button>
        </div>
        {loaded && adapters.length === 0 && <Empty>{boardWords.toolBoard.noAdapters}</Empty>}
        {adapters.length > 0 && (
          <ul className={styles.tools}>
            {adapters.map((tool) => (
              <AdapterRow key={tool.id} tool={tool} onEdit={() => edit(tool)} />
            ))}
          </ul>
        )}
      </section>
      <Wrenches title={boardWords.toolBoard.retired} tools={of(({ isRetired }) => isRetired)} />
      {editing === 'wrench' && <WrenchForm onClose={() => edit(undefined)} />}
      {editing !== undefined && editing !== 'wrench' && (
        <AdapterForm
          {...(editing !== 'adapter' && { tool: editing })}
          wrenches={wrenches.map(({ id }) => id)}
          onClose={() => edit(undefined)}
        />
      )}
    </Page>
  );
}

/** Doubts stay for a year: a bike may come in long after the wrench has been put right. */
function Doubts({
  wrenches,
  today,
}: {
  readonly wrenches: readonly WrenchTool[];
  readonly today: string;
}) {
  const doubts = wrenches
    .flatMap(doubtsOf)
    .filter(({ on, until }) => until === undefined || daysBetween(on, today) <= 365)
    .sort((a, b) => daysBetween(a.on, b.on));
  if (doubts.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{boardWords.toolBoard.toLookInto}</h2>
      <ul className={styles.tools}>
        {doubts.map((doubt) => (
          <DoubtRow key={`${doubt.wrench} ${doubt.key}`} doubt={doubt} />
        ))}
      </ul>
    </section>
  );
}

export function DoubtRow({ doubt }: { readonly doubt: Doubt }) {
  return (
    <li className={styles.doubt}>
      <p>{causeText(doubt)}</p>
      <Link className={styles.link} href={routes.reachBack(doubt.wrench, doubt.key)}>
        {boardWords.toolBoard.showBikes}
      </Link>
    </li>
  );
}

interface WrenchesProps {
  readonly title: string;
  readonly tools: readonly WrenchTool[];
  readonly children?: ReactNode;
}

function Wrenches({ title, tools, children }: WrenchesProps) {
  if (tools.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{title}</h2>
      {children}
      <ul className={styles.tools}>
        {tools.map((tool) => (
          <WrenchRow key={tool.id} tool={tool} />
        ))}
      </ul>
    </section>
  );
}

function WrenchRow({ tool }: { readonly tool: WrenchTool }) {
  const { isFit, isRetired, first, more } = standingOf(tool, useApp().clock.today());
  const { wrench } = tool;
  return (
    <li>
      <Link
        href={routes.wrench(wrench.id)}
        className={classes(styles.tool, !isFit && !isRetired && styles.out)}
      >
        <span className={styles.letter}>{wrench.id}</span>
        <span className={styles.what}>
          <strong>{wrench.name}</strong>
          <span className={styles.soft}>
            {rangeText(wrench)}, {toleranceText(wrench)}
          </span>
        </span>
        <span className={styles.what}>
          <span className={classes(!isFit && !isRetired && styles.bold)}>{first}</span>
          {more.map((text) => (
            <span key={text} className={styles.soft}>
              {text}
            </span>
          ))}
        </span>
        {!isRetired && <OperationsBar used={wrench.operations ?? 0} />}
      </Link>
    </li>
  );
}

function AdapterRow({ tool, onEdit }: { readonly tool: AdapterTool; readonly onEdit: () => void }) {
  const { name, adapter, wrench, retired } = tool;
  const { figure } = words.writing;
  return (
    <li className={styles.adapter}>
      <span className={styles.what}>
        <strong>{name}</strong>
        {retired === true && <span>{boardWords.toolBoard.retired}</span>}
      </span>
      <span className={styles.soft}>
        {boardWords.toolBoard.adapterLine(
          figure(adapter.offset),
          figure(adapter.angle),
          figure(adapter.grip),
        )}
        {wrench !== undefined && `, ${boardWords.toolBoard.adapterOn(wrench)}`}
      </span>
      <Button label={`${boardWords.toolBoard.edit} ${name}`} onPress={onEdit}>
        {boardWords.toolBoard.edit}
      </Button>
    </li>
  );
}
