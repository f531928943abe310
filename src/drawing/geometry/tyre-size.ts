/** The size on a tyre's side wall, as far as a drawing needs it. */

import { parseTyreMarking } from '../../engine/tyres';

export type TyreSize = readonly [width: number, beadSeat: number];

/** Width and bead seat diameter, mm. A print that leaves several sizes open, or none, is drawn in the usual one. */
export function tyreSize(marking: string, usual: TyreSize): TyreSize {
  const read = parseTyreMarking(marking);
  if (read.ok) return [read.value.width, read.value.beadSeat];
  if (read.refusal.code !== 'tyre-size-ambiguous') return usual;
  const [width, beadSeat] = usual;
  const nearest = [...read.refusal.choices].sort(
    (a, b) => Math.abs(a - beadSeat) - Math.abs(b - beadSeat),
  );
  return [width, nearest[0] ?? beadSeat];
}
