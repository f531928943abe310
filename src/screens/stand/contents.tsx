/** What came out of the box, ticked against what should be there; one tap when all of it is. */

import { useState } from 'react';
import type { PartState } from '../../engine/job';
import { words } from '../../words';
import { ActionBar, Button, Notice, Page } from '../parts';
import type { ShownJob } from '../use-job';
import styles from './contents.module.css';
import { NoteDialog, PartName } from './part-note';

const groups = [
  ['part', words.contents.parts],
  ['packing', words.contents.packing],
  ['paper', words.contents.papers],
] as const;

export interface ContentsProps {
  readonly shown: ShownJob;
  readonly title: string;
  readonly onBack?: () => void;
}

export function Contents({ shown, title, onBack }: ContentsProps) {
  const { store, open } = shown;
  const [asked, ask] = useState<{ readonly part: string; readonly name: string }>();
  const contents = open.state.plan?.contents ?? [];
  const unchecked = contents.filter(({ id }) => open.state.contents[id] === undefined);
  const check = (parts: readonly string[], state: PartState) =>
    void store.act({ kind: 'check-contents', parts: parts.map((part) => ({ part, state })) });
  return (
    <Page
      title={title}
      bar={
        <ActionBar
          aside={onBack === undefined ? [] : [{ label: words.app.back, onPress: onBack }]}
          action={
            unchecked.length === 0
              ? onBack && {
                  label: words.contents.done,
                  detail: words.contents.next,
                  onPress: onBack,
                }
              : {
                  label:
                    unchecked.length === contents.length
                      ? words.contents.all(contents.length)
                      : words.contents.rest(unchecked.length),
                  detail: words.contents.next,
                  busy: open.busy,
                  onPress: () =>
                    check(
                      unchecked.map(({ id }) => id),
                      'present',
                    ),
                }
          }
        />
      }
    >
      <p>{words.contents.how}</p>
      <Notice>
        <p>{words.contents.caution}</p>
      </Notice>
      {groups.map(([kind, heading]) => {
        const parts = contents.filter((part) => part.kind === kind);
        if (parts.length === 0) return null;
        return (
          <section key={kind}>
            <h2>{heading}</h2>
            <ul className={styles.parts}>
              {parts.map(({ id, name }) => (
                <li key={id} className={styles.part}>
                  <PartName
                    name={name}
                    mark={open.state.contents[id]}
                    onNote={() => ask({ part: id, name })}
                  />
                  <PartStates
                    name={name}
                    state={open.state.contents[id]?.state}
                    onState={(state) => check([id], state)}
                  />
                </li>
              ))}
            </ul>
          </section>
        );
      })}
      {asked !== undefined && (
        <NoteDialog
          name={asked.name}
          onClose={() => ask(undefined)}
          onNote={(note) => {
            const mark = open.state.contents[asked.part];
            const parts = [{ part: asked.part, state: mark?.state ?? 'damaged', note }] as const;
            void store.act({ kind: 'check-contents', parts });
            ask(undefined);
          }}
        />
      )}
    </Page>
  );
}

const states: readonly [PartState, string][] = [
  ['present', words.contents.present],
  ['missing', words.contents.missing],
  ['damaged', words.contents.damaged],
];

function PartStates({
  name,
  state,
  onState,
}: {
  readonly name: string;
  readonly state: PartState | undefined;
  readonly onState: (state: PartState) => void;
}) {
  return (
    <div className={styles.states}>
      {states.map(([value, label]) => (
        <Button
          key={value}
          pressed={state === value}
          tone={state === value ? 'solid' : 'plain'}
          label={`${name}: ${label}`}
          onPress={() => state !== value && onState(value)}
        >
          {label}
        </Button>
      ))}
    </div>
  );
}
