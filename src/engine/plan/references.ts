/** What a catalogue's steps refer to must be in the catalogue, once. */

import { ok, type Refusal, type Result, refuse } from '../base';
import type { Catalogue } from './catalogue.schema';

/** Whether every id stands once in its list and every reference of a step, joint or part is met. */
export function checkReferences(catalogue: Catalogue): Result<Catalogue, UnmetReference> {
  const steps = new Set(catalogue.steps.map((step) => step.id));
  const joints = new Set(catalogue.joints.map((joint) => joint.id));
  const parts = new Set(catalogue.parts.map((part) => part.id));
  for (const list of [catalogue.steps, catalogue.joints, catalogue.parts]) {
    const twice = list.find((one, index) => list.findIndex(({ id }) => id === one.id) !== index);
    if (twice) return refuse({ code: 'id-not-unique', id: twice.id });
  }
  for (const step of catalogue.steps) {
    const unknown = [...step.after, ...step.reliesOn].find((id) => !steps.has(id));
    if (unknown !== undefined)
      return refuse({ code: 'step-unknown', step: unknown, askedBy: step.id });
    if (step.joint !== undefined && !joints.has(step.joint))
      return refuse({ code: 'joint-unknown', joint: step.joint, askedBy: step.id });
    const missing = step.parts.find((id) => !parts.has(id));
    if (missing !== undefined)
      return refuse({ code: 'part-unknown', part: missing, askedBy: step.id });
  }
  return ok(catalogue);
}

export type UnmetReference = Refusal &
  (
    | { readonly code: 'id-not-unique'; readonly id: string }
    | { readonly code: 'step-unknown'; readonly step: string; readonly askedBy: string }
    | { readonly code: 'joint-unknown'; readonly joint: string; readonly askedBy: string }
    | { readonly code: 'part-unknown'; readonly part: string; readonly askedBy: string }
  );
