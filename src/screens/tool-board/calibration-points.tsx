/** Test points to type: one row each, one large pad for whichever cell is tapped, and the verdict of each point at once. */

import { useState } from 'react';
import type { Wrench } from '../../engine/torque';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { Button, classes, NumberPad } from '../parts';
import styles from './calibration.module.css';
import {
  type Column,
  type DraftPoint,
  type Judged,
  judged as judge,
  pointIn,
  type Way,
} from './calibration-draft';
import { deviationText } from './wrench-standing';

export interface CalibrationPointsProps {
  readonly title: string;
  readonly wrench: Wrench;
  readonly way: Way;
  readonly withUncertainty: boolean;
  readonly points: readonly DraftPoint[];
  readonly onChange: (points: readonly DraftPoint[]) => void;
}

interface Cell {
  readonly row: number;
  readonly column: Column;
}

export function CalibrationPoints(props: CalibrationPointsProps) {
  const { title, wrench, way, withUncertainty, points, onChange } = props;
  const { calibration } = boardWords;
  const [cell, select] = useState<Cell>({ row: 0, column: 'value' });
  const judged = judge(wrench, points, way);
  const columns = columnsFor(wrench, way, withUncertainty);
  const selected = points[cell.row];
  const type = (text: string) =>
    onChange(
      points.map((point, row) => (row === cell.row ? { ...point, [cell.column]: text } : point)),
    );
  return (
    <section className={styles.points} aria-label={title}>
      <div>
        <h2>{title}</h2>
        <div className={styles.rows}>
          {points.map((point, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
            <div key={row} className={styles.row}>
              {columns.map(({ column, label }) => (
                <button
                  key={column}
                  type="button"
                  className={classes(
                    styles.cell,
                    row === cell.row && column === cell.column && styles.now,
                  )}
                  aria-pressed={row === cell.row && column === cell.column}
                  aria-label={`${calibration.cell(label, point.at || String(row + 1))}: ${point[column] || calibration.empty}`}
                  onClick={() => select({ row, column })}
                >
                  <span className={styles.label}>{label}</span>
                  <span className={styles.typed}>{point[column] || '–'}</span>
                </button>
              ))}
              <p className={styles.verdict}>{verdictText(point, way, judged)}</p>
            </div>
          ))}
        </div>
        <Button
          tone="quiet"
          onPress={() => {
            onChange([...points, { at: '', value: '', uncertainty: '' }]);
            select({ row: points.length, column: 'at' });
          }}
        >
          {calibration.addPoint}
        </Button>
      </div>
      {selected !== undefined && (
        <div className={styles.pad}>
          <NumberPad
            label={title}
            value={selected[cell.column]}
            onChange={type}
            point="."
            eraseLabel={words.app.erase}
            maxLength={8}
            extraKeys={way === 'deviation' && cell.column === 'value' ? [calibration.minus] : []}
          />
        </div>
      )}
    </section>
  );
}

function columnsFor(wrench: Wrench, way: Way, withUncertainty: boolean) {
  const { calibration } = boardWords;
  const value = way === 'true' ? calibration.tester(wrench.unit) : calibration.deviation;
  return [
    { column: 'at', label: `${calibration.pointAt}, ${wrench.unit}` },
    { column: 'value', label: value },
    ...(withUncertainty ? [{ column: 'uncertainty', label: calibration.uncertainty }] : []),
  ] as readonly { readonly column: Column; readonly label: string }[]; // the three there are
}

function verdictText(draft: DraftPoint, way: Way, { result }: Judged): string {
  const { verdict } = boardWords.calibration;
  const point = pointIn(draft, way);
  if (point === undefined) return verdict.missing;
  const judged = result?.points.find(
    ({ at, deviation }) => at === point.at && deviation === point.deviation,
  );
  if (judged === undefined) return deviationText(point.deviation);
  return deviationText(point.deviation, judged.within ? verdict.inside : verdict.outside);
}
