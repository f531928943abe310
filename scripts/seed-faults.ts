/** What would make the seeds fail at the stand, though each file parses: references, circles, things that nobody uses. */

import { topologicalOrder } from '../src/engine/base';
import { type Catalogue, resolvePlan } from '../src/engine/plan';
import { conditionFaults } from './seed-conditions';
import type { Seeds } from './seed-files';

/** A title stands in one line on the stand's screen; what to do is read at arm's length. */
const longestTitle = 45;
const longestHow = 230;

export function catalogueFrom({ steps, joints, parts }: Seeds): Catalogue {
  return { version: 'seeds', steps: [...steps], joints: [...joints], parts: [...parts] };
}

/** One line for each fault, with the id where it is found. */
export function seedFaults(seeds: Seeds): string[] {
  return [
    ...repeatedIds(seeds),
    ...unmetReferences(seeds),
    ...misaskedConditions(seeds),
    ...circles(seeds),
    ...jointFaults(seeds),
    ...unneededParts(seeds),
    ...textFaults(seeds),
    ...planFaults(seeds),
  ];
}

function repeatedIds({ steps, joints, parts, points, markets }: Seeds): string[] {
  return Object.entries({ steps, joints, parts, points, markets }).flatMap(([list, rows]) => {
    const ids = rows.map(({ id }) => id as string); // market ids are a narrower text
    const repeated = ids.filter((id, index) => ids.indexOf(id) !== index);
    return repeated.map((id) => `${list}: ${id} stands there twice`);
  });
}

function unmetReferences({ steps, joints, parts, points }: Seeds): string[] {
  const known = {
    step: new Set(steps.map(({ id }) => id)),
    joint: new Set(joints.map(({ id }) => id)),
    part: new Set(parts.map(({ id }) => id)),
  };
  const missing = (asker: string, kind: keyof typeof known, ids: readonly string[]) =>
    ids.filter((id) => !known[kind].has(id)).map((id) => `${asker}: there is no ${kind} ${id}`);
  return [
    ...steps.flatMap((step) => [
      ...missing(`step ${step.id}`, 'step', [...step.after, ...step.reliesOn]),
      ...missing(`step ${step.id}`, 'joint', step.joint === undefined ? [] : [step.joint]),
      ...missing(`step ${step.id}`, 'part', step.parts),
    ]),
    ...points.flatMap((point) => missing(`point ${point.id}`, 'step', point.reliesOn)),
  ];
}

function misaskedConditions({ steps, joints, parts, points }: Seeds): string[] {
  const asking = [
    ...steps.map(({ id, when }) => ({ where: `step ${id}`, when })),
    ...parts.map(({ id, when }) => ({ where: `part ${id}`, when })),
    ...points.map(({ id, when }) => ({ where: `point ${id}`, when })),
    ...joints.flatMap(({ id, variants }) =>
      variants.map(({ when }) => ({ where: `joint ${id}`, when })),
    ),
  ];
  return asking.flatMap(({ where, when }) =>
    conditionFaults(when).map((fault) => `${where}: ${fault}`),
  );
}

function circles({ steps }: Seeds): string[] {
  const order = topologicalOrder(
    new Map(steps.map((step) => [step.id, [...step.after, ...step.reliesOn]])),
  );
  return order.ok ? [] : [`steps: a circle: ${order.refusal.cycle.join(' → ')}`];
}

function jointFaults({ steps, joints }: Seeds): string[] {
  return joints.flatMap(({ id, usual, variants }) => {
    const tightenedBy = steps.filter(({ joint }) => joint === id);
    const ranges = [usual, ...variants.flatMap((variant) => variant.usual ?? [])];
    return [
      ...(tightenedBy.length === 0 ? [`joint ${id}: no step tightens it`] : []),
      ...(tightenedBy.length > 1
        ? [`joint ${id}: ${tightenedBy.map((step) => step.id).join(' and ')} both tighten it`]
        : []),
      ...ranges
        .filter(({ min, max }) => min > max)
        .map(({ min, max }) => `joint ${id}: ${min}–${max} N·m is no range`),
    ];
  });
}

function unneededParts({ steps, parts }: Seeds): string[] {
  const needed = new Set(steps.flatMap((step) => step.parts));
  return parts
    .filter(({ id, kind }) => kind === 'part' && !needed.has(id))
    .map(({ id }) => `part ${id}: no step needs it`);
}

function textFaults({ steps }: Seeds): string[] {
  return steps.flatMap(({ id, title, how, effort: [least, likely, most] }) => [
    ...(title.length > longestTitle ? [`step ${id}: the title has ${title.length} letters`] : []),
    ...(how.length > longestHow ? [`step ${id}: how to do it has ${how.length} letters`] : []),
    ...(least > likely || likely > most
      ? [`step ${id}: effort ${least}, ${likely}, ${most} does not rise`]
      : []),
  ]);
}

/** Every demo bike must have a plan, and in it no measure may stand twice. */
function planFaults(seeds: Seeds): string[] {
  return seeds.bikes.flatMap((bike) => {
    const plan = resolvePlan(bike, catalogueFrom(seeds));
    if (!plan.ok) return [`bike ${bike.frameNumber}: ${JSON.stringify(plan.refusal)}`];
    const measures = plan.value.steps.flatMap((step) => step.measures.map(({ id }) => id));
    const repeated = measures.filter((id, index) => measures.indexOf(id) !== index);
    return repeated.map((id) => `bike ${bike.frameNumber}: measure ${id} stands there twice`);
  });
}
