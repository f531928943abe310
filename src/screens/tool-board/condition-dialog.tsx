/** What has happened to a wrench: dropped, overloaded, away, retired, or back in service; with the day and the reason. */

import { useState } from 'react';
import { type WrenchCondition, wrenchConditions } from '../../engine/torque';
import type { WrenchTool } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Choice, Dialog, Problem, TextField } from '../parts';
import styles from './wrench-page.module.css';

export interface ConditionDialogProps {
  readonly tool: WrenchTool;
  readonly onClose: () => void;
}

export function ConditionDialog({ tool, onClose }: ConditionDialogProps) {
  const app = useApp();
  const { toolBoard } = boardWords;
  const { id, condition } = tool.wrench;
  const others = wrenchConditions.filter((value) => value !== condition);
  const [to, setTo] = useState<WrenchCondition>();
  const [on, setOn] = useState(app.clock.today());
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string>();
  const save = async () => {
    if (to === undefined) return;
    const noted = await app.changeCondition({ wrench: id, to, on, reason });
    if (!noted.ok) return setProblem(words.refusal({ ...noted.refusal }));
    onClose();
  };
  return (
    <Dialog
      title={toolBoard.conditionTitle(id)}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" disabled={to === undefined} onPress={() => void save()}>
          {toolBoard.conditionSave}
        </Button>
      }
    >
      <Problem>{problem}</Problem>
      <Choice
        label={toolBoard.condition}
        value={to}
        onChange={setTo}
        options={others.map((value) => ({
          value,
          label: sentence(toolBoard.conditionNames[value]),
          detail: toolBoard.conditionDetails[value],
        }))}
      />
      <TextField label={toolBoard.conditionOn} type="date" value={on} onChange={setOn} />
      {to !== undefined && (
        <div className={styles.do}>
          {toolBoard.quickReasons[to].map((quick) => (
            <Button key={quick} pressed={reason === quick} onPress={() => setReason(quick)}>
              {quick}
            </Button>
          ))}
        </div>
      )}
      <TextField
        label={toolBoard.conditionReason}
        value={reason}
        onChange={setReason}
        maxLength={200}
      />
    </Dialog>
  );
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
