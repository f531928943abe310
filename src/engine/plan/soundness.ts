/** What would make a plan unsound, though it resolves: a joint nobody looks at, a part that is not in the box, a feature passed over. */

import { descendants } from '../base';
import { type Bike, type BikeFacts, factsOf } from '../bike';
import type { Catalogue } from './catalogue.schema';
import { type Ground, groundsOf, holds, questionsAsked } from './condition';
import type { Condition } from './condition.schema';
import { featuresToHandle } from './handled-features';
import type { Plan } from './plan.schema';

/** A point of the walk, as far as a plan has to know it. */
export interface LookedAt {
  readonly id: string;
  readonly when?: Condition | undefined;
  readonly reliesOn: readonly string[];
}

export type PlanFault =
  | { readonly code: 'step-before-what-it-needs'; readonly step: string; readonly other: string }
  | { readonly code: 'joint-tightened-twice'; readonly joint: string }
  | { readonly code: 'joint-without-range'; readonly joint: string }
  | { readonly code: 'joint-never-looked-at'; readonly joint: string; readonly step: string }
  | { readonly code: 'part-not-in-box'; readonly step: string; readonly part: string }
  | { readonly code: 'part-not-needed'; readonly part: string }
  | ({ readonly code: 'feature-passed-over' } & Ground);

/** Everything unsound about the plan of one bike, resolved from this catalogue and walked by these points; none for a sound one. */
export function planFaults(
  bike: Bike,
  plan: Plan,
  catalogue: Catalogue,
  points: readonly LookedAt[],
): readonly PlanFault[] {
  const facts = factsOf(bike);
  const route = points.filter(({ when }) => holds(when, facts));
  return [
    ...orderFaults(plan),
    ...jointFaults(plan, route),
    ...partFaults(plan, catalogue, facts),
    ...featureFaults(catalogue, facts, route),
  ];
}

function orderFaults({ steps }: Plan): readonly PlanFault[] {
  const position = new Map(steps.map(({ id }, index) => [id, index]));
  return steps.flatMap(({ id, after, reliesOn }, index) =>
    [...after, ...reliesOn]
      .filter((other) => (position.get(other) ?? steps.length) >= index)
      .map((other) => ({ code: 'step-before-what-it-needs', step: id, other }) as const),
  );
}

function jointFaults({ steps }: Plan, route: readonly LookedAt[]): readonly PlanFault[] {
  const reliance = new Map(steps.map(({ id, reliesOn }) => [id, reliesOn]));
  const walked = new Set(route.flatMap(({ reliesOn }) => reliesOn));
  const seen = new Set<string>();
  return steps.flatMap(({ id, joint }): readonly PlanFault[] => {
    if (joint === undefined) return [];
    const faults: PlanFault[] = [];
    if (seen.has(joint.id)) faults.push({ code: 'joint-tightened-twice', joint: joint.id });
    seen.add(joint.id);
    if (joint.usual.min >= joint.usual.max)
      faults.push({ code: 'joint-without-range', joint: joint.id });
    const confirming = [id, ...descendants(reliance, [id])];
    if (joint.risk === 'A' && !confirming.some((step) => walked.has(step)))
      faults.push({ code: 'joint-never-looked-at', joint: joint.id, step: id });
    return faults;
  });
}

/** What comes fitted, or built in, is not in the box as a thing of its own, and the step works on it where it is. */
const mayBeOnTheBike = /fitted$|^battery$/i;

function partFaults(plan: Plan, catalogue: Catalogue, facts: BikeFacts): readonly PlanFault[] {
  const loose = catalogue.parts.filter(({ when }) =>
    questionsAsked(when).some((question) => mayBeOnTheBike.test(question)),
  );
  const inBox = new Set([...plan.contents, ...loose].map(({ id }) => id));
  const chosen = catalogue.steps.filter(({ when }) => holds(when, facts));
  const needed = new Set(chosen.flatMap(({ parts }) => parts));
  return [
    ...chosen.flatMap(({ id, parts }) =>
      parts
        .filter((part) => !inBox.has(part))
        .map((part) => ({ code: 'part-not-in-box', step: id, part }) as const),
    ),
    ...plan.contents
      .filter(({ id, kind }) => kind === 'part' && !needed.has(id))
      .map(({ id }) => ({ code: 'part-not-needed', part: id }) as const),
  ];
}

function featureFaults(
  { steps, joints }: Catalogue,
  facts: BikeFacts,
  route: readonly LookedAt[],
): readonly PlanFault[] {
  const chosen = steps.filter(({ when }) => holds(when, facts));
  const tightened = new Set(chosen.flatMap(({ joint }) => joint ?? []));
  const conditions = [
    ...chosen.map(({ when }) => when),
    ...joints
      .filter(({ id }) => tightened.has(id))
      .map(({ variants }) => variants.find(({ when }) => holds(when, facts))?.when),
    ...route.map(({ when }) => when),
  ];
  const keyOf = ({ question, answer }: Ground) => `${question}=${String(answer)}`;
  const handled = new Set(conditions.flatMap((when) => groundsOf(when, facts)).map(keyOf));
  return featuresToHandle(facts)
    .filter((feature) => !handled.has(keyOf(feature)))
    .map((feature) => ({ code: 'feature-passed-over', ...feature }) as const);
}
