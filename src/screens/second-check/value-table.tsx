/** Every pressure, insertion and other value of the build, as it was measured last, there or on the walk. */

import { type JobState, latestMeasure, stepsOf } from '../../engine/job';
import { words } from '../../words';
import { useNames } from '../app-context';
import styles from './second-check.module.css';

export function ValueTable({ state }: { readonly state: JobState }) {
  const names = useNames(state.plan);
  const rows = stepsOf(state).flatMap(({ measures }) =>
    measures.flatMap((measure) => {
      const latest = latestMeasure(state, measure.id);
      return latest === undefined ? [] : [{ measure, latest }];
    }),
  );
  if (rows.length === 0) return null;
  return (
    <section>
      <h2>{words.sign.values}</h2>
      <div className={styles.scroll}>
        <table className={styles.values}>
          <thead>
            <tr>
              <th scope="col">{words.sign.value}</th>
              <th scope="col">{words.sign.measured}</th>
              <th scope="col">{words.sign.limit}</th>
              <th scope="col">{words.sign.by}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ measure: { id, name, unit, limit }, latest }) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td>{words.writing.measured(latest.value, unit)}</td>
                <td>{words.writing.measuredLimit(limit, unit)}</td>
                <td>{names.person(latest.by)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
