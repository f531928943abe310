/** Every joint whose failure can hurt, as it was tightened. */

import { type JobState, stepsOf } from '../../engine/job';
import { words } from '../../words';
import { useNames } from '../app-context';
import styles from './second-check.module.css';

export function JointTable({ state }: { readonly state: JobState }) {
  const names = useNames(state.plan);
  const rows = stepsOf(state).flatMap(({ joint }) => {
    const tightened = joint && state.joints[joint.id]?.tightened;
    return joint?.risk === 'A' && tightened ? [{ joint, tightened }] : [];
  });
  if (rows.length === 0) return null;
  return (
    <section>
      <h2>{words.sign.joints}</h2>
      <div className={styles.scroll}>
        <table className={styles.joints}>
          <thead>
            <tr>
              <th scope="col">{words.sign.joint}</th>
              <th scope="col">{words.sign.figure}</th>
              <th scope="col">{words.sign.source}</th>
              <th scope="col">{words.sign.setTo}</th>
              <th scope="col">{words.sign.by}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ joint, tightened }) => (
              <tr key={joint.id}>
                <th scope="row">{joint.name}</th>
                <td className={styles.figure}>{words.writing.range(tightened.figure)}</td>
                <td>{words.source(tightened.figure.source, names)}</td>
                <td>
                  {words.writing.quantity(
                    words.writing.figure(tightened.onScale, 2),
                    tightened.wrench.unit,
                  )}
                  , {tightened.wrench.id}
                </td>
                <td>{names.person(tightened.by)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
