/** Test points of a certificate: where, how far out, how sure, and whether inside what the class allows. */

import { calibrationResult, type Wrench } from '../../engine/torque';
import type { ToolNote } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import styles from './wrench-page.module.css';
import { deviationText } from './wrench-standing';

type Points = Extract<ToolNote, { readonly kind: 'calibrated' }>['found'];

export interface PointsTableProps {
  readonly title: string;
  readonly points: Points;
  readonly wrench: Wrench;
}

export function PointsTable({ title, points, wrench }: PointsTableProps) {
  const { writing } = words;
  const { toolBoard } = boardWords;
  const judged = calibrationResult(wrench, points);
  const isUnsure = points.some(({ uncertainty }) => uncertainty !== undefined);
  const isInside = (at: number) =>
    judged.ok && judged.value.points.find((point) => point.at === at)?.within === true;
  return (
    <table className={styles.points}>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{toolBoard.at}</th>
          <th scope="col">{toolBoard.deviation}</th>
          {isUnsure && <th scope="col">{toolBoard.uncertainty}</th>}
          <th scope="col">{toolBoard.tolerance}</th>
        </tr>
      </thead>
      <tbody>
        {[...points]
          .sort((a, b) => a.at - b.at)
          .map(({ at, deviation, uncertainty }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the same value may be tested twice
            <tr key={`${at} ${index}`}>
              <th scope="row">
                {writing.figure(at, 2)} {wrench.unit}
              </th>
              <td>{deviationText(deviation)}</td>
              {isUnsure && (
                <td>
                  {uncertainty === undefined ? '' : `± ${writing.figure(uncertainty * 100, 2)} %`}
                </td>
              )}
              <td>{isInside(at) ? toolBoard.inside : <strong>{toolBoard.outside}</strong>}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
