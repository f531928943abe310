/** What is typed or picked about one box, as the fields hold it. */

import type { Bike, BikeKind, Extra } from '../engine/bike';

/** By place, what was answered; a place that is left out takes what is usual. */
export type DetailAnswers = Readonly<Record<string, string>>;

export interface BoxDraft {
  readonly make: string;
  readonly model: string;
  readonly kind: BikeKind;
  readonly frameNumber: string;
  readonly gtin: string;
  readonly colour: string;
  readonly size: string;
  readonly due: string;
  readonly cartonDamage: string;
  readonly fork: Bike['fork']['kind'];
  readonly frontAxle: Bike['front']['axle'];
  readonly rearAxle: Bike['rear']['axle'];
  readonly frontBrake: Bike['front']['brake'];
  readonly rearBrake: Bike['rear']['brake'];
  readonly frontTyre: string;
  readonly rearTyre: string;
  readonly pressure: string;
  readonly stem: Bike['steering']['stem'];
  readonly bar: Bike['steering']['bar'];
  readonly gears: Bike['gears']['kind'];
  readonly speeds: string;
  readonly clamp: Bike['seat']['clamp'];
  readonly post: string;
  readonly frameMaterial: Bike['frame']['material'];
  readonly barMaterial: Bike['frame']['material'];
  readonly postMaterial: Bike['frame']['material'];
  readonly steererMaterial: Bike['frame']['material'];
  readonly extras: readonly Extra[];
  readonly loadLimit: string;
  readonly assist: Bike['assist'];
  /** What was answered beyond the first questions. */
  readonly details: DetailAnswers;
}
