/** One named part of the drawing: lit when it is the place the work is at. */

import { createContext, type ReactNode, useContext } from 'react';
import styles from '../drawing.module.css';
import { type Tube, tubeOutline } from '../geometry/tube';
import type { PartName } from '../part-names';

/** The parts that stand out in the drawing around. */
export const LitParts = createContext<ReadonlySet<PartName>>(new Set());

export function Part({ of, far, children }: { of: PartName; far?: boolean; children: ReactNode }) {
  const lit = useContext(LitParts).has(of);
  const look = lit ? styles.lit : far ? styles.far : styles.part;
  return (
    <g className={look} data-part={of} data-lit={lit || undefined}>
      {children}
    </g>
  );
}

/** Tubes in the given order, each as its outline over what lies behind it. */
export function Tubes({ tubes, far }: { tubes: readonly Tube[]; far?: boolean }) {
  return tubes.map((tube) => {
    const outline = tubeOutline(tube);
    return (
      <Part key={outline} of={tube.part} far={far ?? false}>
        <path className={styles.outline} d={outline} />
      </Part>
    );
  });
}
