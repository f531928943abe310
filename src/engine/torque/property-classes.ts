/** How strong a bolt is, by the class marked on its head. */

import { type Newtons, newtons } from '../units';
import type { Thread } from './thread.schema';
import { threadGeometry } from './threads';

export type Strength = {
  readonly material: 'steel' | 'stainless';
  /** R_p0.2 (R_eL or R_pf), N/mm². */
  readonly yield: number;
  /** Proof stress S_p, N/mm²; ISO 3506-1 states none for stainless, so its yield stands in. */
  readonly proof: number;
};

const steel = (yieldStress: number, proof: number): Strength => ({
  material: 'steel',
  yield: yieldStress,
  proof,
});
const stainless = (yieldStress: number): Strength => ({
  material: 'stainless',
  yield: yieldStress,
  proof: yieldStress,
});

/**
 * Steel: ISO 898-1 (proof of 8.8 and 12.9 as published; the rest from memory). Stainless: ISO 3506-1, from memory (450 and
 * 600 reproduce published preload tables).
 */
const strengthByPropertyClass = {
  '4.6': steel(240, 225),
  '4.8': steel(340, 310),
  '5.6': steel(300, 280),
  '5.8': steel(420, 380),
  '6.8': steel(480, 440),
  '8.8': steel(640, 580),
  '9.8': steel(720, 650),
  '10.9': steel(940, 830),
  '12.9': steel(1100, 970),
  'A2-50': stainless(210),
  'A2-70': stainless(450),
  'A2-80': stainless(600),
  'A4-50': stainless(210),
  'A4-70': stainless(450),
  'A4-80': stainless(600),
} as const;

export type PropertyClass = keyof typeof strengthByPropertyClass;

export const propertyClasses = Object.keys(strengthByPropertyClass) as readonly PropertyClass[]; // the keys of the literal above

/** ISO 898-1 sets 8.8 a little higher above M16 (from memory). */
const coarse88 = steel(660, 600);

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

export function isPropertyClass(name: string): name is PropertyClass {
  return Object.hasOwn(strengthByPropertyClass, name);
}
