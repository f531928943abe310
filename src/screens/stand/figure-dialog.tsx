/** The figure as printed on the part, on its own pad; or from a document; or, by name, a usual range. */

import { useState } from 'react';
import { isFarFromUsual } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import type { Figure } from '../../engine/torque';
import { newtonMetres, parseTorqueMarking, writeTorqueMarking } from '../../engine/units';
import { words } from '../../words';
import { useHands } from '../app-context';
import { Button, Choice, Dialog, Notice, NumberPad, TextField } from '../parts';
import styles from './figure-dialog.module.css';
import type { Tightening } from './use-tightening';

const pieces = ['–', 'max ', 'min ', ' ±', ' N·m', ' in·lb', ' ft·lb', ' kgf·cm'];

export interface FigureDialogProps {
  readonly step: PlanStep;
  readonly tightening: Tightening;
}

export function FigureDialog({ step, tightening }: FigureDialogProps) {
  const hands = useHands();
  const [marking, setMarking] = useState('');
  const [from, setFrom] = useState<'part' | 'document'>('part');
  const [reference, setReference] = useState('');
  const [shouldComplain, complain] = useState(false);
  /** The marking that was questioned once; asked for again, it is what the part says. */
  const [doubted, doubt] = useState<string>();
  const read = parseTorqueMarking(marking);
  const close = () => tightening.show(undefined);
  const keep = async (figure: Figure) => {
    if (await tightening.enter(figure)) close();
  };
  const isFar = read.ok && isFarFromUsual(step, read.value.figure);
  const use = () => {
    if (
      !read.ok ||
      read.value.figure === undefined ||
      (from === 'document' && reference.trim() === '')
    )
      return complain(true);
    if (isFar && doubted !== marking) return doubt(marking);
    const source =
      from === 'part'
        ? ({ kind: 'part', printed: marking.trim() } as const)
        : ({ kind: 'document', reference: reference.trim() } as const);
    void keep({ ...read.value.figure, source });
  };
  return (
    <Dialog
      title={words.torque.enterTitle}
      closeLabel={words.app.cancel}
      onClose={close}
      wide
      actions={
        <Button tone="solid" onPress={use}>
          {doubted === marking && isFar ? words.torque.useAnyway : words.torque.use}
        </Button>
      }
    >
      <TextField
        label={words.torque.marking}
        hint={read.ok ? undefined : words.torque.enterHint}
        value={marking}
        onChange={setMarking}
        inputMode="none"
        error={shouldComplain && !read.ok ? notRead(marking, read.refusal) : undefined}
      />
      {read.ok && read.value.figure !== undefined && (
        <p className={styles.read} role="status">
          {words.torque.readAs(writeTorqueMarking(read.value.figure, 'N·m', 2))}
        </p>
      )}
      {isFar && doubted === marking && step.joint !== undefined && (
        <Notice as="alert">
          <p>{words.torque.far(`${words.writing.range(step.joint.usual)} N·m`)}</p>
        </Notice>
      )}
      {read.ok && read.value.disagree && (
        <Notice as="alert">
          <p>{words.torque.disagree}</p>
          <div className={styles.either}>
            {read.value.printed.map((one) => (
              <Button key={one.text} onPress={() => setMarking(one.text.trim())}>
                {one.text.trim()}
              </Button>
            ))}
          </div>
        </Notice>
      )}
      <NumberPad
        label={words.torque.marking}
        value={marking}
        onChange={setMarking}
        extraKeys={pieces}
        point="."
        eraseLabel={words.app.erase}
        maxLength={40}
      >
        <Choice
          label={words.torque.whereFrom}
          value={from}
          onChange={setFrom}
          options={[
            { value: 'part', label: words.torque.onPart },
            { value: 'document', label: words.torque.document },
          ]}
        />
        {from === 'document' && (
          <TextField
            label={words.torque.documentHint}
            value={reference}
            onChange={setReference}
            maxLength={60}
            error={shouldComplain && reference.trim() === '' ? words.goodsIn.needed : undefined}
          />
        )}
        {step.joint !== undefined && (
          <Notice
            actions={
              <Button
                disabled={hands === undefined}
                onPress={() => hands && void keep(usualFigure(step, hands.id))}
              >
                {words.torque.acceptUsual}
              </Button>
            }
          >
            <p>
              {words.torque.usual(
                `${words.writing.range(step.joint.usual)} N·m (${step.joint.source})`,
              )}
            </p>
            <p>{words.torque.usualWarning}</p>
          </Notice>
        )}
      </NumberPad>
    </Dialog>
  );
}

function notRead(marking: string, refusal: { readonly code: string }): string {
  return marking.trim() === '' ? words.torque.empty : words.refusal({ ...refusal });
}

function usualFigure({ joint }: PlanStep, acceptedBy: string): Figure {
  const { min = 1, max = 1 } = joint?.usual ?? {};
  return {
    min: newtonMetres(min),
    max: newtonMetres(max),
    source: { kind: 'usual', acceptedBy },
  };
}
