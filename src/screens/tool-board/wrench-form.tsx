/** One wrench as it is: its scale and its class. A new one also says when it was last calibrated. */

import { useState } from 'react';
import {
  type Wrench,
  type WrenchKind,
  type WrenchType,
  wrenchClasses,
  wrenchClassTable,
  wrenchKinds,
  wrenchSchema,
} from '../../engine/torque';
import { type TorqueUnit, torqueUnits } from '../../engine/units';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, Pick, TextField } from '../parts';
import { numberIn } from './number-in';
import styles from './tool-board.module.css';

export interface WrenchFormProps {
  readonly wrench?: Wrench;
  readonly onClose: () => void;
}

interface Draft {
  readonly id: string;
  readonly name: string;
  readonly kind: WrenchKind;
  readonly type: WrenchType;
  readonly class: Wrench['class'];
  readonly lowest: string;
  readonly highest: string;
  readonly increment: string;
  readonly unit: TorqueUnit;
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly operations: string;
}

export function WrenchForm({ wrench, onClose }: WrenchFormProps) {
  const app = useApp();
  const [draft, setDraft] = useState(() => draftOf(wrench, app.clock.today()));
  const [problem, setProblem] = useState<string>();
  const change = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const save = async () => {
    const parsed = wrenchSchema.safeParse(wrenchIn(draft));
    if (!parsed.success) return setProblem(boardWords.toolBoard.wrong);
    const { id, name, type, lowest, highest, increment, unit } = parsed.data;
    const described = { name, kind: draft.kind, type, class: parsed.data.class };
    const saved = await (wrench === undefined
      ? app.addTool({ kind: 'wrench', wrench: parsed.data })
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
      {problem !== undefined && (
        <Notice as="alert">
          <p>{problem}</p>
        </Notice>
      )}
      <div className={styles.fields}>
        <Description draft={draft} isNew={wrench === undefined} onChange={change} />
        {wrench === undefined && <LastCalibration draft={draft} onChange={change} />}
      </div>
    </Dialog>
  );
}

interface PartProps {
  readonly draft: Draft;
  readonly onChange: (part: Partial<Draft>) => void;
}

function Description({ draft, isNew, onChange }: PartProps & { readonly isNew: boolean }) {
  const { toolBoard } = boardWords;
  const text = (part: 'id' | 'name' | 'lowest' | 'highest' | 'increment') => ({
    value: draft[part],
    onChange: (value: string) => onChange({ [part]: value }),
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

function LastCalibration({ draft, onChange }: PartProps) {
  const { toolBoard } = boardWords;
  return (
    <>
      <TextField
        label={toolBoard.calibrated}
        type="date"
        value={draft.calibratedOn}
        onChange={(calibratedOn) => onChange({ calibratedOn })}
      />
      <TextField
        label={toolBoard.due}
        type="date"
        value={draft.dueOn}
        onChange={(dueOn) => onChange({ dueOn })}
      />
      <TextField
        label={toolBoard.operationsSoFar}
        inputMode="numeric"
        value={draft.operations}
        onChange={(operations) => onChange({ operations })}
      />
    </>
  );
}

function draftOf(wrench: Wrench | undefined, today: string): Draft {
  return {
    id: wrench?.id ?? '',
    name: wrench?.name ?? '',
    kind: wrench?.kind ?? 'click',
    type: wrench?.type ?? 'II',
    class: wrench?.class ?? 'A',
    lowest: String(wrench?.lowest ?? ''),
    highest: String(wrench?.highest ?? ''),
    increment: String(wrench?.increment ?? ''),
    unit: wrench?.unit ?? 'N·m',
    calibratedOn: wrench?.calibratedOn ?? today,
    dueOn: wrench?.dueOn ?? '',
    operations: '0',
  };
}

/** Names go into addresses and records: letters, digits and hyphens. */
const usableName = /^[\p{L}\p{N}-]+$/u;

function wrenchIn({ operations, lowest, highest, increment, id, name, ...rest }: Draft) {
  return {
    ...rest,
    id: usableName.test(id.trim()) ? id.trim() : '',
    name: name.trim(),
    lowest: numberIn(lowest),
    highest: numberIn(highest),
    increment: numberIn(increment),
    operations: numberIn(operations),
    condition: 'in service',
  };
}
