/** Names of the things that facts refer to by id; what has no name is shown by its id. */

import type { JobPlan } from '../engine/job';

export interface Names {
  readonly step: (id: string) => string;
  readonly joint: (id: string) => string;
  readonly point: (id: string) => string;
  readonly part: (id: string) => string;
  readonly person: (id: string) => string;
  readonly wrench: (id: string) => string;
}

const asItIs = (id: string) => id;

export const plainNames: Names = {
  step: asItIs,
  joint: asItIs,
  point: asItIs,
  part: asItIs,
  person: asItIs,
  wrench: asItIs,
};

/** Names out of a job's own frozen plan, and the shop's people. */
export function namesFrom(
  plan: JobPlan | undefined,
  people: readonly { readonly id: string; readonly name: string }[] = [],
): Names {
  const steps = new Map(plan?.steps.map(({ id, title }) => [id, title]));
  const joints = new Map(
    plan?.steps.flatMap(({ joint }) => (joint ? [[joint.id, joint.name]] : [])),
  );
  const points = new Map(plan?.points.map(({ id, name }) => [id, name]));
  const parts = new Map(plan?.contents.map(({ id, name }) => [id, name]));
  const persons = new Map(people.map(({ id, name }) => [id, name]));
  return {
    step: (id) => steps.get(id) ?? id,
    joint: (id) => joints.get(id) ?? id,
    point: (id) => points.get(id) ?? id,
    part: (id) => parts.get(id) ?? id,
    person: (id) => persons.get(id) ?? id,
    wrench: asItIs,
  };
}
