/** A pallet from a file: read first, shown line by line, taken in together. */

import { useState } from 'react';
import type { DeliveryReading } from '../../state';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, FilePicker, Notice, Problem, Working } from '../parts';
import styles from './goods-in.module.css';

export function DeliveryList() {
  const app = useApp();
  const [reading, setReading] = useState<DeliveryReading>();
  const [problem, setProblem] = useState<string>();
  const [taken, setTaken] = useState<number>();
  const [isBusy, setBusy] = useState(false);
  const read = async (file: File) => {
    setTaken(undefined);
    setReading(undefined);
    setBusy(true);
    const text = await app.readTextFile(file);
    const answer = text.ok ? await app.readDeliveryList(text.value) : text;
    setBusy(false);
    setProblem(answer.ok ? undefined : words.refusal({ ...answer.refusal }));
    if (answer.ok) setReading(answer.value);
  };
  const takeAll = async (rows: DeliveryReading['rows']) => {
    setBusy(true);
    const kept = await app.keepDeliveries(rows);
    setBusy(false);
    if (!kept.ok) return setProblem(words.refusal({ ...kept.refusal }));
    setTaken(kept.value);
    setReading(undefined);
  };
  return (
    <div className={styles.form}>
      <p>{words.goodsIn.listHint}</p>
      <div className={styles.photo}>
        <FilePicker
          tone="solid"
          accept=".csv,text/csv,text/plain"
          onPick={(file) => void read(file)}
        >
          {words.goodsIn.chooseFile}
        </FilePicker>
        <a className={styles.sample} href="./demo/delivery-list.csv" download>
          {words.goodsIn.sample}
        </a>
      </div>
      {isBusy && reading === undefined && <Working>{words.goodsIn.reading}</Working>}
      <Problem>{problem}</Problem>
      {taken !== undefined && (
        <Notice as="status">
          <p>{words.goodsIn.allTaken(taken)}</p>
        </Notice>
      )}
      {reading !== undefined && <Reading reading={reading} isBusy={isBusy} onTakeAll={takeAll} />}
    </div>
  );
}

interface ReadingProps {
  readonly reading: DeliveryReading;
  readonly isBusy: boolean;
  readonly onTakeAll: (rows: DeliveryReading['rows']) => Promise<void>;
}

function Reading({ reading: { rows, refused }, isBusy, onTakeAll }: ReadingProps) {
  return (
    <>
      {refused.length > 0 && (
        <section>
          <h2>{words.goodsIn.bad(refused.length)}</h2>
          <ul className={styles.lines}>
            {refused.map((row) => (
              <li key={`${row.line} ${row.code} ${row.column}`}>
                <strong>{words.goodsIn.line(row.line)}</strong> · {words.refusal({ ...row })}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{words.goodsIn.good(rows.length)}</h2>
        {rows.length === 0 && <p>{words.goodsIn.noneGood}</p>}
        <ul className={styles.lines}>
          {rows.map(({ line, bike }) => (
            <li key={line}>
              <strong>{bike.frameNumber}</strong> · {bike.make} {bike.model}
              {bike.size !== undefined && ` · ${bike.size}`}
            </li>
          ))}
        </ul>
      </section>
      {rows.length > 0 && (
        <Button tone="solid" wide busy={isBusy} onPress={() => void onTakeAll(rows)}>
          {words.goodsIn.takeAll(rows.length)}
        </Button>
      )}
    </>
  );
}
