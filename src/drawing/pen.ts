/** The look of a whole drawing: its tone, and a pen as wide as suits its size. */

import type { BikeGeometry } from './bike-geometry';
import styles from './drawing.module.css';

export type Tone = 'screen' | 'print';

export function classOfDrawing(geometry: BikeGeometry, tone: Tone): string {
  const classes = [styles.drawing, penFor(geometry.box.width)];
  if (tone === 'print') classes.push(styles.print);
  return classes.filter(Boolean).join(' ');
}

/** Widths of the drawn box, mm. */
function penFor(width: number): string | undefined {
  if (width < 1250) return styles.tiny;
  if (width < 1700) return styles.little;
  return width > 2300 ? styles.long : undefined;
}
