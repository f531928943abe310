/** Every figure that is known for one joint of one job, each with how it came here. */

import { figureFor, type JobEvent } from '../../engine/job';
import type { PlanJoint } from '../../engine/plan';
import type { Figure } from '../../engine/torque';
import { newtonMetres } from '../../engine/units';
import { type KnownFigure, knownFigures, type OpenJob } from '../../state';

export type KnownHere = Figure & {
  /** Entered on this very bike, frozen with its plan, on the shop's shelf for this model, or the usual range. */
  readonly from: 'this-bike' | 'plan' | 'shelf' | 'usual';
  /** Who entered it on this bike, and when their clock claimed. */
  readonly entered?: { readonly by: string; readonly at: string };
  readonly isInUse: boolean;
};

type Open = Pick<OpenJob, 'state' | 'entries'>;

export function figuresKnownHere(
  { state, entries }: Open,
  joint: PlanJoint,
  book: readonly KnownFigure[],
): readonly KnownHere[] {
  const inUse = figureFor(state, joint.id);
  const shelf = state.bike && knownFigures(book, state.bike)[joint.id];
  const planned = state.plan?.figures[joint.id];
  const all = [
    ...enteredHere(entries, joint.id),
    ...(planned === undefined ? [] : [{ ...planned, from: 'plan' as const }]),
    ...(shelf === undefined ? [] : [{ ...shelf, from: 'shelf' as const }]),
    usualOf(joint),
  ];
  const held = inUse && textOf(inUse);
  const seen = new Set<string>();
  return all.flatMap((figure) => {
    const text = textOf(figure);
    if (seen.has(text)) return [];
    seen.add(text);
    return [{ ...figure, isInUse: text === held }];
  });
}

/** The last first, so that of the same figure entered twice the newer entry is shown. */
function enteredHere(
  entries: Open['entries'],
  joint: string,
): readonly Omit<KnownHere, 'isInUse'>[] {
  return entries.toReversed().flatMap(({ event, by, at }) => {
    const made = event as JobEvent; // unknown kinds are no figure
    if (made.kind !== 'figure-entered' || made.joint !== joint) return [];
    return [{ ...made.figure, from: 'this-bike' as const, entered: { by, at: at.claimed } }];
  });
}

function usualOf({ usual }: PlanJoint): Omit<KnownHere, 'isInUse'> {
  const { min, max } = usual;
  return {
    min: newtonMetres(min),
    max: newtonMetres(max),
    source: { kind: 'usual' },
    from: 'usual',
  };
}

/** Limits and source alone: how a figure came here makes no other figure of it. */
function textOf({ min, max, target, source }: Figure): string {
  return JSON.stringify([min, max, target, Object.entries(source).sort()]);
}
