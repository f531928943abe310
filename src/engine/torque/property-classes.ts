/** How strong a bolt is, by the class marked on its head. */

import { type Newtons, newtons } from '../units';
import type { Thread } from './thread.schema';
import { threadGeometry } from './threads';

export type Strength = {
  readonly material: 'steel' | 'stainless';
  /** Least tensile strength R_m, N/mm². */
  readonly tensile: number;
  /** R_p0.2 (R_eL or R_pf), N/mm². */
  readonly yield: number;
  /** Proof stress S_p, N/mm²; ISO 3506-1 states none for stainless, so its yield stands in. */
  readonly proof: number;
};

const steel = (tensile: number, yieldStress: number, proof: number): Strength => ({
  material: 'steel',
  tensile,
  yield: yieldStress,
  proof,
});
const stainless = (tensile: number, yieldStress: number): Strength => ({
  material: 'stainless',
  tensile,
  yield: yieldStress,
  proof: yieldStress,
});

/**
 * Steel: ISO 898-1 (proof and tensile loads of 8.8 and 12.9 as published; the rest from memory). Stainless: ISO 3506-1, from
 * memory (450 and 600 reproduce published preload tables; A4-100 since its 2020 edition).
 */
const strengthByPropertyClass = {
  '4.6': steel(400, 240, 225),
  '4.8': steel(420, 340, 310),
  '5.6': steel(500, 300, 280),
  '5.8': steel(520, 420, 380),
  '6.8': steel(600, 480, 440),
  '8.8': steel(800, 640, 580),
  '9.8': steel(900, 720, 650),
  '10.9': steel(1040, 940, 830),
  '12.9': steel(1220, 1100, 970),
  'A1-50': stainless(500, 210),
  'A1-70': stainless(700, 450),
  'A1-80': stainless(800, 600),
  'A2-50': stainless(500, 210),
  'A2-70': stainless(700, 450),
  'A2-80': stainless(800, 600),
  'A4-50': stainless(500, 210),
  'A4-70': stainless(700, 450),
  'A4-80': stainless(800, 600),
  'A4-100': stainless(1000, 800),
} as const;

export type PropertyClass = keyof typeof strengthByPropertyClass;

export const propertyClasses = Object.keys(strengthByPropertyClass) as readonly PropertyClass[]; // the keys of the literal above

/** ISO 898-1 sets 8.8 a little higher above M16 (from memory). */
const coarse88 = steel(830, 660, 600);

/** Strength of a class at a nominal diameter, mm. */
export function strengthOf(propertyClass: PropertyClass, diameter: number): Strength {
  return propertyClass === '8.8' && diameter > 16
    ? coarse88
    : strengthByPropertyClass[propertyClass];
}

/** The load a bolt bears without lasting stretch, N: stress area times proof stress (ISO 898-1). */
export function proofLoad(thread: Thread, propertyClass: PropertyClass): Newtons {
  const { proof } = strengthOf(propertyClass, thread.diameter);
  return newtons(threadGeometry(thread).stressArea * proof);
}

/** The load below which a bolt of this class never breaks in tension, N: stress area times tensile strength (ISO 898-1). */
export function tensileLoad(thread: Thread, propertyClass: PropertyClass): Newtons {
  const { tensile } = strengthOf(propertyClass, thread.diameter);
  return newtons(threadGeometry(thread).stressArea * tensile);
}

export function isPropertyClass(name: string): name is PropertyClass {
  return Object.hasOwn(strengthByPropertyClass, name);
}
