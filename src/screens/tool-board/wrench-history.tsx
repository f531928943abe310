/** Everything that was noted of a wrench, the newest first: calibrations with their points, conditions with their reasons. */

import { useStore } from 'zustand';
import type { ToolNote, WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp, useNames } from '../app-context';
import { Empty } from '../parts';
import { PointsTable } from './points-table';
import styles from './wrench-page.module.css';

export function WrenchHistory({ tool }: { readonly tool: WrenchTool }) {
  const { history = [] } = tool;
  const { person } = useNames(undefined);
  const rack = useStore(useApp().rack, ({ rows }) => rows);
  const placed = history.map((note, place) => ({ note, place })).reverse();
  const frameOf = (job: string) => rack.find((row) => row.job === job)?.frameNumber ?? job;
  return (
    <section className={styles.section}>
      <h2>{boardWords.toolBoard.history}</h2>
      {history.length === 0 && <Empty>{boardWords.toolBoard.noHistory}</Empty>}
      <ol className={styles.history} reversed>
        {placed.map(({ note, place }) => (
          <li key={place} className={styles.note}>
            <p className={styles.by}>
              {boardWords.toolBoard.noteBy(
                person(note.by),
                `${words.date(note.at.claimed)}, ${words.time(note.at.claimed)}`,
              )}
            </p>
            <div className={styles.said}>
              {sentencesOf(note, frameOf).map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              {note.kind === 'calibrated' && <CalibrationPoints note={note} tool={tool} />}
            </div>
          </li>
        ))}
      </ol>
    </section>
  );
}

type Calibrated = Extract<ToolNote, { readonly kind: 'calibrated' }>;

function CalibrationPoints({
  note: { found, adjusted },
  tool: { wrench },
}: {
  readonly note: Calibrated;
  readonly tool: WrenchTool;
}) {
  return (
    <div className={styles.tables}>
      {found.length > 0 && (
        <PointsTable title={boardWords.toolBoard.found} points={found} wrench={wrench} />
      )}
      {adjusted !== undefined && (
        <PointsTable title={boardWords.toolBoard.left} points={adjusted.points} wrench={wrench} />
      )}
    </div>
  );
}

function sentencesOf(note: ToolNote, frameOf: (job: string) => string): readonly string[] {
  const { toolBoard } = boardWords;
  switch (note.kind) {
    case 'added':
      return [toolBoard.noteAdded];
    case 'changed':
      return [toolBoard.noteChanged];
    case 'condition':
      return [
        toolBoard.noteCondition(
          toolBoard.conditionNames[note.to],
          words.date(note.on),
          note.reason,
        ),
      ];
    case 'called-back': {
      const say = note.how === 'record-amended' ? toolBoard.noteCalledBack : toolBoard.noteReopened;
      return [say(frameOf(note.job), note.text)];
    }
    case 'calibrated':
      return calibrationSentences(note);
  }
}

function calibrationSentences(note: Calibrated): readonly string[] {
  const { toolBoard } = boardWords;
  const { found, foundOutside, adjusted, reference, isGood, operations } = note;
  const facts = [
    ...(reference === undefined ? [] : [toolBoard.noteReference(reference)]),
    toolBoard.noteOperations(operations),
  ].join(', ');
  return [
    `${toolBoard.noteCalibrated(words.date(note.on), words.date(note.dueOn))} (${facts})`,
    foundOutside
      ? toolBoard.noteOutside
      : found.length === 0
        ? toolBoard.noteNoValues
        : toolBoard.noteInside,
    ...(adjusted === undefined ? [] : [toolBoard.noteAdjusted(adjusted.how)]),
    ...(isGood ? [] : [toolBoard.noteOutOfService]),
  ];
}
