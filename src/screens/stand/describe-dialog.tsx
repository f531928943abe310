/** Corrects what a boxed bike is, before its plan is frozen. */

import { useState } from 'react';
import type { Bike } from '../../engine/bike';
import { words } from '../../words';
import { BikeFields } from '../bike-fields';
import { draftOf, readDraft } from '../box-draft';
import { Button, Dialog, Notice, TextField } from '../parts';
import type { ShownJob } from '../use-job';

export interface DescribeDialogProps {
  readonly shown: ShownJob;
  readonly bike: Bike;
  readonly onClose: () => void;
}

export function DescribeDialog({ shown, bike, onClose }: DescribeDialogProps) {
  const { store, open } = shown;
  const [draft, setDraft] = useState(() => draftOf(bike, open.state.due));
  const [shouldComplain, complain] = useState(false);
  const reading = readDraft(draft);
  const wrong = (place: string, sentence: string = words.goodsIn.needed) =>
    shouldComplain && !reading.ok && reading.wrong.has(place) ? sentence : undefined;
  const keep = async () => {
    if (!reading.ok) return complain(true);
    const due = draft.due === '' ? {} : { due: draft.due };
    const described = await store.act({
      kind: 'describe-bike',
      bike: corrected(bike, reading.bike),
    });
    if (described && draft.due !== (open.state.due ?? ''))
      await store.act({ kind: 'set-due', ...due });
    onClose();
  };
  return (
    <Dialog
      title={words.opening.correct}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" onPress={() => void keep()}>
          {words.opening.keep}
        </Button>
      }
    >
      {shouldComplain && !reading.ok && (
        <Notice as="alert">
          <p>{words.goodsIn.correctFirst}</p>
        </Notice>
      )}
      <TextField
        label={words.goodsIn.frameNumber}
        value={draft.frameNumber}
        onChange={(frameNumber) => setDraft({ ...draft, frameNumber })}
        error={wrong('frameNumber', words.goodsIn.frameShape)}
        maxLength={30}
      />
      <TextField
        label={words.goodsIn.due}
        type="datetime-local"
        value={draft.due}
        onChange={(due) => setDraft({ ...draft, due })}
      />
      <BikeFields
        draft={draft}
        onChange={(part) => setDraft({ ...draft, ...part })}
        wrong={wrong}
      />
    </Dialog>
  );
}

/** What the form does not ask stays as it was: the carton alone tells the rear tyre’s own pressure. */
function corrected(before: Bike, after: Bike): Bike {
  const { tyrePressure } = before.rear;
  const isRearsOwn = tyrePressure !== undefined && tyrePressure !== before.front.tyrePressure;
  return isRearsOwn ? { ...after, rear: { ...after.rear, tyrePressure } } : after;
}
