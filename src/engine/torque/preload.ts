/** The clamping force behind a torque, and the torque behind a clamping force (VDI 2230, long form). */

import { ok, type Result, refuse } from '../base';
import { type Millimetres, type NewtonMetres, type Newtons, newtonMetres, newtons } from '../units';
import type { Thread } from './thread.schema';
import { knownThread, type ThreadNotInTable, threadGeometry } from './threads';

export type FrictionJoint = {
  readonly thread: Thread;
  /** Coefficients of friction in the thread and under the head, above 0. */
  readonly frictionThread: number;
  readonly frictionHead: number;
  /** Outer diameter of the bearing surface under the head, and of the hole it stands on, mm. */
  readonly headDiameter: Millimetres;
  readonly holeDiameter: Millimetres;
};

/**
 * Preload in N from torque in N·m: F = M / (P/2π + μ_thread·d₂/(2·cos 30°) + μ_head·D_Km/2), D_Km = (d_w + d_h)/2 (VDI 2230,
 * DIN 946). An estimate about the effect of friction, never a specification: real friction scatters widely. Refuses a
 * thread that is not in the table, materials it does not hold for, and a bearing surface or friction that cannot be.
 */
export function preloadFrom(
  joint: FrictionJoint & {
    readonly torque: NewtonMetres;
    /** Every material of the joint as far as known; leave out only where the caller has already checked them. */
    readonly materials?: readonly string[];
  },
): Result<Newtons, PreloadRefusal> {
  const arm = leverArm(joint);
  if (!arm.ok) return arm;
  const unfit = (joint.materials ?? []).find((material) => !isComputed(material));
  if (unfit !== undefined) return materialNotComputed(unfit);
  return ok(newtons((joint.torque * 1000) / arm.value));
}

export type MaterialNotComputed = {
  readonly code: 'material-not-computed';
  readonly material: string;
};
export type BearingImpossible = { readonly code: 'bearing-impossible' };
export type PreloadRefusal = ThreadNotInTable | MaterialNotComputed | BearingImpossible;

/** Torque in N·m that brings a bolt to a preload in N; the same formula the other way round, the same refusals. */
export function torqueFor(
  joint: FrictionJoint & { readonly preload: Newtons },
): Result<NewtonMetres, PreloadRefusal> {
  const arm = leverArm(joint);
  return arm.ok ? ok(newtonMetres((joint.preload * arm.value) / 1000)) : arm;
}

/**
 * K of the short form T = K·F·d that handbooks use, worked out from the long form: what stands for the whole of friction and
 * thread in one number, about 0.2 for a dry bolt. The same refusals.
 */
export function nutFactor(joint: FrictionJoint): Result<number, PreloadRefusal> {
  const arm = leverArm(joint);
  return arm.ok ? ok(arm.value / joint.thread.diameter) : arm;
}

/**
 * Preload in N at which tension and torsion together reach a share of the yield stress (N/mm²):
 * F = ν·R_p0.2·A_s / √(1 + 3·[1.5·(d₂/d_s)·(P/(π·d₂) + 1.155·μ)]²) (VDI 2230).
 */
export function assemblyPreload(bolt: {
  readonly thread: Thread;
  readonly yieldStress: number;
  readonly frictionThread: number;
  readonly share?: number;
}): Newtons {
  const { thread, yieldStress, frictionThread, share = 0.9 } = bolt;
  const { pitchDiameter, stressDiameter, stressArea } = threadGeometry(thread);
  const lead = thread.pitch / (Math.PI * pitchDiameter) + frictionThread / Math.cos(Math.PI / 6);
  const torsion = 1.5 * (pitchDiameter / stressDiameter) * lead;
  return newtons((share * yieldStress * stressArea) / Math.sqrt(1 + 3 * torsion ** 2));
}

/** Metals only; carbon, plastic and whatever is unknown are never computed. */
const computedMaterials: readonly string[] = ['steel', 'stainless', 'aluminium', 'titanium'];

export function isComputed(material: string): boolean {
  return computedMaterials.includes(material);
}

export function materialNotComputed(material: string) {
  return refuse<MaterialNotComputed>({ code: 'material-not-computed', material });
}

/** Torque per preload, mm: what the thread's rise, its friction and the head's friction each take. */
function leverArm(joint: FrictionJoint): Result<number, ThreadNotInTable | BearingImpossible> {
  const { thread, frictionThread, frictionHead, headDiameter, holeDiameter } = joint;
  const known = knownThread(thread);
  if (!known.ok) return known;
  const sound = frictionThread > 0 && frictionHead > 0 && holeDiameter > 0;
  if (!sound || headDiameter <= holeDiameter) {
    return refuse<BearingImpossible>({ code: 'bearing-impossible' });
  }
  const rise = thread.pitch / (2 * Math.PI);
  const inThread =
    (frictionThread * threadGeometry(thread).pitchDiameter) / (2 * Math.cos(Math.PI / 6));
  const underHead = (frictionHead * (headDiameter + holeDiameter)) / 4;
  return ok(rise + inThread + underHead);
}
