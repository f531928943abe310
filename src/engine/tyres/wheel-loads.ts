/** How the weight of rider, luggage and bike rests on the two wheels. */

import { type Kilograms, kilograms } from '../units';

/** The front wheel's share by posture. Source: common practice, no source. */
export const frontShareByPosture = { neutral: 0.45, sporty: 0.4, upright: 0.33 } as const;

export type Posture = keyof typeof frontShareByPosture;

/** The load on each wheel, kg, from the total, kg. */
export function wheelLoads(asked: { readonly total: Kilograms; readonly posture: Posture }): {
  readonly front: Kilograms;
  readonly rear: Kilograms;
} {
  const front = asked.total * frontShareByPosture[asked.posture];
  return { front: kilograms(front), rear: kilograms(asked.total - front) };
}
