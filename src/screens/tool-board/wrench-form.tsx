/** One wrench as it is: its scale and its class. A new one also says when it was last calibrated. */

import { useState } from 'react';
import { type Wrench, wrenchClasses, wrenchClassTable, wrenchKinds } from '../../engine/torque';
import { torqueUnits } from '../../engine/units';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, Pick, TextField } from '../parts';
import styles from './tool-board.module.css';
import { readWrench, type WrenchDraft, type WrenchFaults, wrenchDraft } from './wrench-draft';

export interface WrenchFormProps {
  readonly wrench?: Wrench;
  readonly onClose: () => void;
}

export function WrenchForm({ wrench, onClose }: WrenchFormProps) {
  const app = useApp();
  const [draft, setDraft] = useState(() => wrenchDraft(wrench));
  const [shouldComplain, complain] = useState(false);
  const [problem, setProblem] = useState<string>();
  const change = (part: Partial<WrenchDraft>) => setDraft({ ...draft, ...part });
  const reading = readWrench(draft, app.clock.today(), wrench === undefined);
  const faults = shouldComplain && !reading.ok ? reading.faults : {};
  const save = async () => {
    complain(true);
    if (!reading.ok) return setProblem(undefined);
    const { id, name, type, lowest, highest, increment, unit } = reading.wrench;
    const described = { name, kind: draft.kind, type, class: reading.wrench.class };
    const saved = await (wrench === undefined
      ? app.addTool({ kind: 'wrench', wrench: reading.wrench })
      : app.describeWrench(id, { ...described, lowest, highest, increment, unit }));
    if (!saved.ok) return setProblem(words.refusal({ ...saved.refusal }));
    onClose();
  };
  return (
    <Dialog
      title={wrench === undefined ? boardWords.toolBoard.add : boardWords.toolBoard.correct}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" onPress={() => void save()}>
          {boardWords.toolBoard.save}
        </Button>
      }
    >
      {(problem ?? wrongFields(faults)) !== undefined && (
        <Notice as="alert">
          <p>{problem ?? wrongFields(faults)}</p>
        </Notice>
      )}
      <div className={styles.fields}>
        <Description draft={draft} faults={faults} isNew={wrench === undefined} onChange={change} />
        {wrench === undefined && (
          <LastCalibration draft={draft} faults={faults} onChange={change} />
        )}
      </div>
    </Dialog>
  );
}

/** Names the fields, because a long form hides them below its edge. */
function wrongFields(faults: WrenchFaults): string | undefined {
  const { toolBoard } = boardWords;
  const labels = {
    id: toolBoard.name,
    name: toolBoard.description,
    kind: toolBoard.kind,
    type: toolBoard.type,
    class: toolBoard.class,
    lowest: toolBoard.lowest,
    highest: toolBoard.highest,
    increment: toolBoard.increment,
    unit: toolBoard.unit,
    calibratedOn: toolBoard.calibrated,
    dueOn: toolBoard.due,
    operations: toolBoard.operationsSoFar,
  } as const satisfies Record<keyof WrenchDraft, string>;
  const wrong = (Object.keys(labels) as (keyof WrenchDraft)[]) // the labels name every field
    .filter((field) => faults[field] !== undefined)
    .map((field) => `“${labels[field]}”`);
  return wrong.length === 0 ? undefined : toolBoard.wrong(wrong);
}

interface PartProps {
  readonly draft: WrenchDraft;
  /** Empty until somebody has tried to save it. */
  readonly faults: WrenchFaults;
  readonly onChange: (part: Partial<WrenchDraft>) => void;
}

function Description({ draft, faults, isNew, onChange }: PartProps & { readonly isNew: boolean }) {
  const { toolBoard } = boardWords;
  const text = (part: 'id' | 'name' | 'lowest' | 'highest' | 'increment') => ({
    value: draft[part],
    onChange: (value: string) => onChange({ [part]: value }),
    error: faults[part],
  });
  return (
    <>
      {isNew && (
        <TextField
          label={toolBoard.name}
          hint={toolBoard.nameHint}
          {...text('id')}
          maxLength={4}
          autoCapitalize="characters"
        />
      )}
      <TextField label={toolBoard.description} {...text('name')} maxLength={60} />
      <Pick
        label={toolBoard.kind}
        value={draft.kind}
        onChange={(kind) => onChange({ kind })}
        options={wrenchKinds.map((value) => ({ value, label: toolBoard.kindNames[value] }))}
      />
      <Pick
        label={toolBoard.type}
        value={draft.type}
        onChange={(type) => onChange({ type })}
        options={[
          { value: 'I', label: toolBoard.typeI },
          { value: 'II', label: toolBoard.typeII },
        ]}
      />
      <Pick
        label={toolBoard.class}
        value={draft.class}
        onChange={(value) => onChange({ class: value })}
        error={faults.class}
        options={wrenchClasses
          .filter((value) => wrenchClassTable[draft.type][value] !== undefined)
          .map((value) => ({ value, label: value }))}
      />
      <Pick
        label={toolBoard.unit}
        value={draft.unit}
        onChange={(unit) => onChange({ unit })}
        options={torqueUnits.map((value) => ({ value, label: value }))}
      />
      <TextField label={toolBoard.lowest} inputMode="decimal" {...text('lowest')} />
      <TextField label={toolBoard.highest} inputMode="decimal" {...text('highest')} />
      <TextField label={toolBoard.increment} inputMode="decimal" {...text('increment')} />
    </>
  );
}

function LastCalibration({ draft, faults, onChange }: PartProps) {
  const { toolBoard } = boardWords;
  return (
    <>
      <TextField
        label={toolBoard.calibrated}
        type="date"
        value={draft.calibratedOn}
        onChange={(calibratedOn) => onChange({ calibratedOn })}
        hint={toolBoard.calibratedHint}
        error={faults.calibratedOn}
        required
      />
      <TextField
        label={toolBoard.due}
        type="date"
        value={draft.dueOn}
        onChange={(dueOn) => onChange({ dueOn })}
        error={faults.dueOn}
        required
      />
      <TextField
        label={toolBoard.operationsSoFar}
        inputMode="numeric"
        value={draft.operations}
        onChange={(operations) => onChange({ operations })}
        error={faults.operations}
      />
    </>
  );
}
