/** Which wrench: those that can do this joint first, with what to set; the others with the reason they cannot. */

import { useState } from 'react';
import type { RankedWrench } from '../../engine/torque';
import { words } from '../../words';
import { jointWords } from '../../words/joint';
import { useNames } from '../app-context';
import { Button, Dialog, Pick } from '../parts';
import type { Tightening } from './use-tightening';
import styles from './wrench-dialog.module.css';

export interface WrenchDialogProps {
  readonly tightening: Tightening;
  readonly onBoard: () => void;
}

export function WrenchDialog({ tightening, onBoard }: WrenchDialogProps) {
  const { ranked, adapters, madeFor, wrench, show, take } = tightening;
  const [adapter, setAdapter] = useState(tightening.adapter?.id ?? 'none');
  const close = () => show(undefined);
  return (
    <Dialog
      title={words.torque.chooseTitle}
      closeLabel={words.app.close}
      onClose={close}
      wide
      actions={<Button onPress={onBoard}>{words.torque.toBoard}</Button>}
    >
      {adapters.length > 0 && (
        <Pick
          label={words.torque.adapter}
          value={adapter}
          onChange={(picked) => {
            setAdapter(picked);
            take(wrench?.wrench.id ?? '', picked === 'none' ? undefined : picked);
          }}
          options={[
            { value: 'none', label: words.torque.noAdapter },
            ...adapters.map(({ id, name }) => ({
              value: id,
              label: madeFor[id] === undefined ? name : words.torque.madeFor(name, madeFor[id]),
            })),
          ]}
        />
      )}
      <ul className={styles.wrenches}>
        {ranked.map((one) => (
          <WrenchRow
            key={one.wrench.id}
            ranked={one}
            isTaken={one.wrench.id === wrench?.wrench.id}
            onTake={() => {
              take(one.wrench.id, adapter === 'none' ? undefined : adapter);
              close();
            }}
          />
        ))}
      </ul>
    </Dialog>
  );
}

function WrenchRow({
  ranked,
  isTaken,
  onTake,
}: {
  readonly ranked: RankedWrench;
  readonly isTaken: boolean;
  readonly onTake: () => void;
}) {
  const names = useNames(undefined);
  const { wrench, plan, refusal, reasons } = ranked;
  return (
    <li className={styles.wrench}>
      <div>
        <p className={styles.name}>
          {wrench.id} · {wrench.name}
        </p>
        <p>
          {plan !== undefined &&
            `${words.torque.setTo(wrench.id, `${words.writing.figure(plan.onScale, 2)} ${plan.unit}`)} ${words.torque.eachEnds(words.writing.figure(plan.jointLow), words.writing.figure(plan.jointHigh))}`}
          {refusal !== undefined && words.refusal(refusal, names)}
        </p>
        {plan !== undefined && <p className={styles.reasons}>{reasonsText(reasons)}</p>}
      </div>
      {plan !== undefined && (
        <Button tone={isTaken ? 'solid' : 'plain'} onPress={onTake}>
          {words.torque.choose(wrench.id)}
        </Button>
      )}
    </li>
  );
}

function reasonsText(reasons: RankedWrench['reasons']): string {
  const sentences: Readonly<Record<string, string>> = jointWords.wrench.reasons; // refusals have their own
  const said = reasons.flatMap((reason) => sentences[reason] ?? []).join('; ');
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}
