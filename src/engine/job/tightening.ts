/** Where a joint stands: the figure that holds for it, and the pass that comes next. */

import type { Result } from '../base';
import { ok, refuse } from '../base';
import type { PlanStep } from '../plan';
import { type Figure, type Layout, type Pass, tighteningPasses } from '../torque';
import type { JobState } from './state';

/** What was read on this very part comes before what the shop knew when the job opened. */
export function figureFor(state: JobState, joint: string): Figure | undefined {
  return state.joints[joint]?.figure ?? state.plan?.figures[joint];
}

export function layoutOf(step: PlanStep): Layout | undefined {
  return step.joint && { shape: step.joint.layout, bolts: step.joint.bolts };
}

/** Passes made to another figure say nothing about this one. */
export function withFigure(state: JobState, joint: string, figure: Figure): JobState {
  const held = state.joints[joint];
  const mark = {
    passes: [],
    stale: held?.stale ?? false,
    tightened: held?.tightened,
    figure,
  };
  return { ...state, joints: { ...state.joints, [joint]: mark } };
}

export interface NextPass {
  readonly figure: Figure;
  readonly pass: Pass;
  readonly of: number;
}

export type NoNextPass =
  | { readonly code: 'joint-unknown'; readonly step: string }
  | { readonly code: 'figure-missing'; readonly joint: string };

/**
 * The next round over the bolts. A joint that only went stale (it was not loosened itself) needs its last round
 * shown again; a loosened one begins anew. With `read`, as if that figure had just been entered.
 */
export function nextPass(
  held: JobState,
  step: PlanStep,
  read?: Figure,
): Result<NextPass, NoNextPass> {
  const state = read && step.joint ? withFigure(held, step.joint.id, read) : held;
  const layout = layoutOf(step);
  if (step.joint === undefined || layout === undefined)
    return refuse({ code: 'joint-unknown', step: step.id });
  const figure = figureFor(state, step.joint.id);
  if (figure === undefined) return refuse({ code: 'figure-missing', joint: step.joint.id });
  const passes = tighteningPasses(figure, layout);
  const made = state.joints[step.joint.id]?.passes.length ?? 0;
  const pass = passes[Math.min(made, passes.length - 1)] as Pass; // there is always at least one pass
  return ok({ figure, pass, of: passes.length });
}
