/** Steps that a shop has switched off: they are in no plan, and what leant on them leans on what they leant on. */

import type { Step } from './catalogue.schema';

/** A condition that holds for no bike. */
const never = { any: [] };

interface SwitchedOff {
  readonly steps: Step[];
  /** The ids, and behind each that is switched off whatever it relied on. */
  readonly bridged: (ids: readonly string[]) => string[];
}

export function switchedOff(steps: readonly Step[], off: ReadonlySet<string>): SwitchedOff {
  const stepById = new Map(steps.map((step) => [step.id, step]));
  const bridge = (ids: readonly string[], over: (step: Step) => readonly string[]): string[] => {
    const reached = new Set(ids);
    for (const id of reached) {
      const step = off.has(id) ? stepById.get(id) : undefined;
      for (const further of step ? over(step) : []) reached.add(further);
    }
    return [...reached];
  };
  const bridged = (ids: readonly string[]) => bridge(ids, ({ reliesOn }) => reliesOn);
  return {
    bridged,
    steps: steps.map((step) => ({
      ...step,
      ...(off.has(step.id) && { when: never }),
      after: bridge(step.after, ({ after, reliesOn }) => [...after, ...reliesOn]),
      reliesOn: bridged(step.reliesOn),
    })),
  };
}
