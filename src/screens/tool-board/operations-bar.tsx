/** Operations since the calibration, of those between two calibrations: in words, and drawn to scale. */

import { OPERATIONS_BETWEEN_CALIBRATIONS } from '../../engine/torque';
import { boardWords } from '../../words/board-words';
import styles from './operations-bar.module.css';

export function OperationsBar({ used }: { readonly used: number }) {
  const most = OPERATIONS_BETWEEN_CALIBRATIONS;
  return (
    <span className={styles.operations}>
      <span>{boardWords.toolBoard.operations(used, most)}</span>
      <svg
        className={styles.bar}
        viewBox={`0 0 ${most} 100`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <rect className={styles.all} width={most} height="100" />
        <rect className={styles.used} width={Math.min(used, most)} height="100" />
      </svg>
    </span>
  );
}
