/** One wrench: its scale, its class, its calibration and its condition. */

import { useState } from 'react';
import {
  type Wrench,
  type WrenchCondition,
  type WrenchType,
  wrenchClasses,
  wrenchClassTable,
  wrenchConditions,
  wrenchSchema,
} from '../../engine/torque';
import { type TorqueUnit, torqueUnits } from '../../engine/units';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, Pick, TextField } from '../parts';
import styles from './tool-board.module.css';

export interface WrenchFormProps {
  readonly wrench?: Wrench;
  readonly onClose: () => void;
}

export function WrenchForm({ wrench, onClose }: WrenchFormProps) {
  const app = useApp();
  const [id, setId] = useState(wrench?.id ?? '');
  const [name, setName] = useState(wrench?.name ?? '');
  const [type, setType] = useState<WrenchType>(wrench?.type ?? 'II');
  const [wrenchClass, setClass] = useState<Wrench['class']>(wrench?.class ?? 'A');
  const [lowest, setLowest] = useState(String(wrench?.lowest ?? ''));
  const [highest, setHighest] = useState(String(wrench?.highest ?? ''));
  const [increment, setIncrement] = useState(String(wrench?.increment ?? ''));
  const [unit, setUnit] = useState<TorqueUnit>(wrench?.unit ?? 'N·m');
  const [calibratedOn, setCalibrated] = useState(wrench?.calibratedOn ?? app.clock.today());
  const [dueOn, setDue] = useState(wrench?.dueOn ?? '');
  const [condition, setCondition] = useState<WrenchCondition>(wrench?.condition ?? 'in service');
  const [problem, setProblem] = useState<string>();
  const save = async () => {
    const number = (text: string) => Number(text.replace(',', '.'));
    const parsed = wrenchSchema.safeParse({
      ...wrench,
      id: id.trim(),
      name: name.trim(),
      type,
      class: wrenchClass,
      lowest: number(lowest),
      highest: number(highest),
      increment: number(increment),
      unit,
      calibratedOn,
      dueOn,
      condition,
      ...(wrench !== undefined && calibratedOn !== wrench.calibratedOn && { operations: 0 }),
    });
    if (!parsed.success) return setProblem(words.toolBoard.wrong);
    const saved = await app.saveTool({ id: parsed.data.id, kind: 'wrench', wrench: parsed.data });
    if (!saved.ok) return setProblem(words.refusal({ ...saved.refusal }));
    onClose();
  };
  return (
    <Dialog
      title={wrench?.name ?? words.toolBoard.add}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" onPress={() => void save()}>
          {words.toolBoard.save}
        </Button>
      }
    >
      {problem !== undefined && (
        <Notice as="alert">
          <p>{problem}</p>
        </Notice>
      )}
      <div className={styles.fields}>
        {wrench === undefined && (
          <TextField
            label={words.toolBoard.name}
            value={id}
            onChange={setId}
            maxLength={4}
            autoCapitalize="characters"
          />
        )}
        <TextField
          label={words.toolBoard.description}
          value={name}
          onChange={setName}
          maxLength={60}
        />
        <Pick
          label={words.toolBoard.condition}
          value={condition}
          onChange={setCondition}
          options={wrenchConditions.map((value) => ({ value, label: value }))}
        />
        <TextField
          label={words.toolBoard.calibrated}
          type="date"
          value={calibratedOn}
          onChange={setCalibrated}
        />
        <TextField label={words.toolBoard.due} type="date" value={dueOn} onChange={setDue} />
        <Pick
          label={words.toolBoard.type}
          value={type}
          onChange={setType}
          options={[
            { value: 'I', label: words.toolBoard.typeI },
            { value: 'II', label: words.toolBoard.typeII },
          ]}
        />
        <Pick
          label={words.toolBoard.class}
          value={wrenchClass}
          onChange={setClass}
          options={wrenchClasses
            .filter((value) => wrenchClassTable[type][value] !== undefined)
            .map((value) => ({ value, label: value }))}
        />
        <Pick
          label={words.toolBoard.unit}
          value={unit}
          onChange={setUnit}
          options={torqueUnits.map((value) => ({ value, label: value }))}
        />
        <TextField
          label={words.toolBoard.lowest}
          inputMode="decimal"
          value={lowest}
          onChange={setLowest}
        />
        <TextField
          label={words.toolBoard.highest}
          inputMode="decimal"
          value={highest}
          onChange={setHighest}
        />
        <TextField
          label={words.toolBoard.increment}
          inputMode="decimal"
          value={increment}
          onChange={setIncrement}
        />
      </div>
    </Dialog>
  );
}
