/** Why a step stands where it stands: what it waits for, and what its result holds up. */

export interface OrderedStep {
  readonly id: string;
  readonly after: readonly string[];
  readonly reliesOn: readonly string[];
}

export interface ReasonsForOrder<Step extends OrderedStep> {
  /** Only before it; its own result does not hang on theirs. */
  readonly after: readonly Step[];
  /** Once one of these is disturbed, it has to be shown good again. */
  readonly reliesOn: readonly Step[];
  /** They wait for it. */
  readonly before: readonly Step[];
  /** They go stale when it is disturbed. */
  readonly heldUp: readonly Step[];
}

/** Direct neighbours among the given steps, each in the given order. */
export function reasonsForOrder<Step extends OrderedStep>(
  steps: readonly Step[],
  id: string,
): ReasonsForOrder<Step> {
  const step = steps.find((one) => one.id === id);
  const rests = new Set(step?.reliesOn);
  const waits = new Set(step?.after);
  const heldUp = steps.filter((one) => one.reliesOn.includes(id));
  return {
    after: steps.filter((one) => waits.has(one.id) && !rests.has(one.id)),
    reliesOn: steps.filter((one) => rests.has(one.id)),
    before: steps.filter((one) => one.after.includes(id) && !heldUp.includes(one)),
    heldUp,
  };
}
