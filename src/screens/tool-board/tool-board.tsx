/** The tool board: the wrenches and adapters the shop owns, with their calibration. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { permissibleDeviation, readyWrench, type Wrench } from '../../engine/torque';
import { words } from '../../words';
import { useApp, useNames } from '../app-context';
import { Button, classes, Empty, Notice, Page } from '../parts';
import styles from './tool-board.module.css';
import { WrenchForm } from './wrench-form';

export function ToolBoard() {
  const app = useApp();
  const tools = useStore(app.tools, ({ rows }) => rows);
  const [editing, edit] = useState<Wrench | 'new'>();
  const wrenches = tools.flatMap((tool) => (tool.kind === 'wrench' ? [tool.wrench] : []));
  const adapters = tools.flatMap((tool) => (tool.kind === 'adapter' ? [tool] : []));
  const add = (
    <Button tone="solid" onPress={() => edit('new')}>
      {words.toolBoard.add}
    </Button>
  );
  return (
    <Page title={words.toolBoard.title} beside={add}>
      <Notice>
        <p>{words.toolBoard.caution}</p>
      </Notice>
      <section>
        <h2>{words.toolBoard.wrenches}</h2>
        {wrenches.length === 0 && <Empty action={add}>{words.toolBoard.empty}</Empty>}
        <ul className={styles.tools}>
          {wrenches.map((wrench) => (
            <WrenchRow key={wrench.id} wrench={wrench} onEdit={() => edit(wrench)} />
          ))}
        </ul>
      </section>
      {adapters.length > 0 && (
        <section>
          <h2>{words.toolBoard.adapters}</h2>
          <ul className={styles.tools}>
            {adapters.map(({ id, name, adapter }) => (
              <li key={id} className={styles.tool}>
                <strong>{name}</strong>
                <span>
                  {words.toolBoard.adapterLine(
                    words.writing.figure(adapter.offset),
                    words.writing.figure(adapter.angle),
                  )}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {editing !== undefined && (
        <WrenchForm
          {...(editing !== 'new' && { wrench: editing })}
          onClose={() => edit(undefined)}
        />
      )}
    </Page>
  );
}

function WrenchRow({ wrench, onEdit }: { readonly wrench: Wrench; readonly onEdit: () => void }) {
  const names = useNames(undefined);
  const ready = readyWrench(wrench, useApp().clock.today());
  const { id, name, lowest, highest, unit, dueOn } = wrench;
  return (
    <li className={classes(styles.tool, !ready.ok && styles.out)}>
      <strong>
        {id} · {name}
      </strong>
      <span>
        {words.torque.range(words.writing.figure(lowest), words.writing.figure(highest), unit)},{' '}
        {words.toolBoard.within(words.writing.figure(permissibleDeviation(wrench) * 100))}
      </span>
      <span>
        {ready.ok
          ? `${words.toolBoard.inService}, ${words.toolBoard.dueText(words.date(dueOn))}`
          : words.refusal({ ...ready.refusal }, names)}
      </span>
      <Button label={`${words.toolBoard.edit} ${id}`} onPress={onEdit}>
        {words.toolBoard.edit}
      </Button>
    </li>
  );
}
