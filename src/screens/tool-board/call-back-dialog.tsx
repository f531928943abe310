/** A bike is called back: noted in its sealed record, or the steps of its joints reopened while it is still here. */

import { useState } from 'react';
import type { BikeInDoubt, Doubt } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useApp } from '../app-context';
import { Button, Dialog, Problem, TextField } from '../parts';
import { causeText } from './doubt-text';
import styles from './reach-back.module.css';

export interface CallBackDialogProps {
  readonly doubt: Doubt;
  readonly bike: BikeInDoubt;
  readonly onClose: () => void;
}

export function CallBackDialog({ doubt, bike, onClose }: CallBackDialogProps) {
  const app = useApp();
  const { reachBack } = boardWords;
  const [said, say] = useState('');
  const [problem, setProblem] = useState<string>();
  const [isBusy, setBusy] = useState(false);
  const isGone = bike.status === 'handed-over';
  const joints = bike.joints.map(({ name }) => name).join(', ');
  const save = async () => {
    if (isGone && said.trim() === '') return setProblem(words.refusal({ code: 'reason-missing' }));
    setBusy(true);
    const done = await app.callBack({
      wrench: doubt.wrench,
      doubt: doubt.key,
      job: bike.job,
      joints: bike.joints.map(({ joint, step }) => ({ joint, step })),
      text: isGone
        ? reachBack.recordText(causeText(doubt), joints, said.trim())
        : reachBack.reopenReason(causeText(doubt)),
    });
    setBusy(false);
    if (!done.ok) return setProblem(words.refusal({ ...done.refusal }));
    onClose();
  };
  return (
    <Dialog
      title={
        isGone ? reachBack.callBackTitle(bike.frameNumber) : reachBack.reopenTitle(bike.frameNumber)
      }
      closeLabel={words.app.cancel}
      onClose={onClose}
      actions={
        <Button tone="solid" busy={isBusy} onPress={() => void save()}>
          {isGone ? reachBack.callBackSave : reachBack.reopenSave}
        </Button>
      }
    >
      <Problem>{problem}</Problem>
      <p>{isGone ? reachBack.callBackMeans : reachBack.reopenMeans}</p>
      <p>{joints}</p>
      {isGone && (
        <>
          <div className={styles.tools}>
            {reachBack.callBackQuick.map((quick) => (
              <Button key={quick} pressed={said === quick} onPress={() => say(quick)}>
                {quick}
              </Button>
            ))}
          </div>
          <TextField
            label={reachBack.callBackText}
            value={said}
            onChange={say}
            lines={2}
            maxLength={400}
          />
        </>
      )}
    </Dialog>
  );
}
