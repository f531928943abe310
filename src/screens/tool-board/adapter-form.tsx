/** One adapter: its lengths and angle, and the wrench on which its grip was measured. */

import { useState } from 'react';
import { adapterSchema } from '../../engine/torque';
import type { Tool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Dialog, Pick, Problem, TextField } from '../parts';
import { numberIn } from './number-in';
import styles from './tool-board.module.css';

export interface AdapterFormProps {
  readonly tool?: Extract<Tool, { readonly kind: 'adapter' }>;
  readonly wrenches: readonly string[];
  readonly onClose: () => void;
}

export function AdapterForm({ tool, wrenches, onClose }: AdapterFormProps) {
  const app = useApp();
  const { toolBoard } = boardWords;
  const [name, setName] = useState(tool?.name ?? '');
  const [grip, setGrip] = useState(String(tool?.adapter.grip ?? ''));
  const [offset, setOffset] = useState(String(tool?.adapter.offset ?? ''));
  const [angle, setAngle] = useState(String(tool?.adapter.angle ?? '0'));
  const [wrench, setWrench] = useState(tool?.wrench ?? '');
  const [problem, setProblem] = useState<string>();
  const done = async (work: ReturnType<typeof app.retireAdapter>) => {
    const saved = await work;
    if (saved.ok) onClose();
    else setProblem(words.refusal({ ...saved.refusal }));
  };
  const save = async () => {
    const lengths = { grip: numberIn(grip), offset: numberIn(offset), angle: numberIn(angle) };
    const adapter = adapterSchema.safeParse(lengths);
    if (!adapter.success || name.trim() === '') return setProblem(toolBoard.adapterWrong);
    const described = {
      id: tool?.id ?? app.newId(),
      kind: 'adapter',
      name: name.trim(),
      adapter: adapter.data,
      ...(wrench !== '' && { wrench }),
    } as const;
    if (tool !== undefined) return done(app.describeAdapter(described));
    const added = await app.addTool(described);
    if (added.ok) onClose();
    else setProblem(words.refusal({ ...added.refusal }));
  };
  return (
    <Dialog
      title={tool?.name ?? toolBoard.addAdapter}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <>
          {tool !== undefined && (
            <Button onPress={() => void done(app.retireAdapter(tool.id, tool.retired !== true))}>
              {tool.retired === true ? toolBoard.bringBack : toolBoard.retire}
            </Button>
          )}
          <Button tone="solid" onPress={() => void save()}>
            {toolBoard.saveAdapter}
          </Button>
        </>
      }
    >
      <Problem>{problem}</Problem>
      <div className={styles.fields}>
        <TextField label={toolBoard.adapterName} value={name} onChange={setName} maxLength={60} />
        <Pick
          label={toolBoard.onWrench}
          value={wrench}
          onChange={setWrench}
          options={[
            { value: '', label: toolBoard.anyWrench },
            ...wrenches.map((value) => ({ value, label: value })),
          ]}
        />
        <TextField label={toolBoard.grip} inputMode="decimal" value={grip} onChange={setGrip} />
        <TextField
          label={toolBoard.offset}
          inputMode="decimal"
          value={offset}
          onChange={setOffset}
        />
        <TextField
          label={toolBoard.angle}
          hint={toolBoard.angleHint}
          value={angle}
          onChange={setAngle}
        />
      </div>
    </Dialog>
  );
}
