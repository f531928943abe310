/** The table of joints that can hurt: figure, where it comes from, what was set on which wrench. */

import type { Sheet, SheetJoint, SheetReading } from '../engine/sheet';
import { type Names, words } from '../words';
import styles from './sheet-page.module.css';

const held = words.writing.heldTogether;

export function SheetJoints({ sheet, names }: { readonly sheet: Sheet; readonly names: Names }) {
  const text = words.sheet;
  return (
    <>
      <h2>{text.bolts}</h2>
      <table className={styles.joints}>
        <thead>
          <tr>
            <th scope="col">{text.joint}</th>
            <th scope="col">{text.figure}</th>
            <th scope="col">{text.source}</th>
            <th scope="col">{text.setTo}</th>
            <th scope="col">{text.wrench}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.joints.map((joint) => (
            <tr key={joint.name}>
              <th scope="row">
                {held(`${joint.name}, ${joint.bolts} × ${joint.thread}`)}
                {joint.secondEyes !== undefined && (
                  <span className={styles.readings}>{text.secondEyes(joint.secondEyes)}</span>
                )}
              </th>
              <td className={styles.figure}>{words.writing.range(joint.figure)}</td>
              <td>{held(words.source(joint.figure.source, names))}</td>
              <td className={styles.set}>
                {setText(joint)}
                {joint.readings !== undefined && (
                  <span className={styles.readings}>{readText(joint.readings)}</span>
                )}
              </td>
              <td>
                {joint.wrench}
                {joint.adapter !== undefined && `, ${joint.adapter}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {sheet.otherJoints > 0 && <p className={styles.others}>{text.others(sheet.otherJoints)}</p>}
    </>
  );
}

function setText({ onScale, unit }: SheetJoint): string {
  const value = words.writing.figure(onScale, 2);
  return unit === 'N·m' ? value : words.writing.quantity(value, unit);
}

function readText(readings: readonly SheetReading[]): string {
  const values = readings.map(({ onScale, judged }) => {
    const value = words.writing.figure(onScale, 2);
    return judged === 'undecided' ? words.sheet.nearEnd(value) : value;
  });
  return words.sheet.read(values.join(', '));
}
