/** Validates the seed data and says what is in it; ends with 1 when anything is wrong. `--order` prints the plans in full. */

import { zones } from '../src/engine/base';
import { routeFor } from '../src/engine/inspection';
import { orderQuality, remainingEffort, resolvePlan, risks } from '../src/engine/plan';
import { coverageOf } from './seed-coverage';
import { catalogueFrom, seedFaults } from './seed-faults';
import { readSeeds, type Seeds, seedsFolder } from './seed-files';

const { seeds, faults: unreadable } = readSeeds(seedsFolder);
// References into a file that did not parse would all be unmet: first things first.
const faults = unreadable.length > 0 ? unreadable : seedFaults(seeds);

if (faults.length > 0) {
  console.error(`The seeds have ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}:`);
  for (const fault of faults) console.error(`  ${fault}`);
  process.exitCode = 1;
} else {
  sayWhatIsThere(seeds);
  sayCoverage(seeds);
  sayPlans(seeds, process.argv.includes('--order'));
}

function sayWhatIsThere({ steps, joints, parts, points, markets }: Seeds): void {
  const perZone = zones.map((zone) => `${zone} ${count(steps, (step) => step.zone === zone)}`);
  const perRisk = risks.map((risk) => `${risk} ${count(joints, (joint) => joint.risk === risk)}`);
  const perKind = (['part', 'packing', 'paper'] as const).map(
    (kind) => `${kind} ${count(parts, (part) => part.kind === kind)}`,
  );
  const measuring = count(steps, (step) => step.measures.length > 0);
  console.log(`steps     ${steps.length} (${perZone.join(', ')}); ${measuring} take a measure`);
  console.log(`joints    ${joints.length} (by risk: ${perRisk.join(', ')})`);
  console.log(`contents  ${parts.length} (${perKind.join(', ')})`);
  console.log(`points    ${points.length}`);
  console.log(`markets   ${markets.length} (${markets.map(({ id }) => id).join(', ')})`);
}

function sayCoverage(seeds: Seeds): void {
  const rows = coverageOf(seeds);
  const bare = rows.filter(({ steps, variants, points }) => steps + variants + points === 0);
  const onlySeen = rows.filter(
    ({ steps, variants, points }) => steps + variants === 0 && points > 0,
  );
  const named = (list: typeof rows) =>
    list.map(({ feature }) => `${feature.question} ${String(feature.answer)}`).join(', ');
  console.log(
    `features  ${rows.length} ask for work or a look; ${rows.length - bare.length} are dealt with${bare.length === 0 ? '' : `, not: ${named(bare)}`}`,
  );
  if (onlySeen.length > 0) console.log(`          only looked at: ${named(onlySeen)}`);
}

function sayPlans(seeds: Seeds, inFull: boolean): void {
  const catalogue = catalogueFrom(seeds);
  const used = new Set<string>();
  const seen = new Set<string>();
  for (const bike of seeds.bikes) {
    const plan = resolvePlan(bike, catalogue);
    if (!plan.ok) continue; // said among the faults
    const { steps } = plan.value;
    for (const step of steps) used.add(step.id);
    const model = `${bike.make} ${bike.model}`;
    if (seen.has(model)) continue;
    seen.add(model);
    const { expected } = remainingEffort(plan.value, { done: [] });
    const { changes, bound } = orderQuality(plan.value);
    const figures = [
      `${steps.length} steps`,
      `${count(steps, (step) => step.joint !== undefined)} joints`,
      `${count(steps, (step) => step.measures.length > 0)} measuring`,
      `${routeFor(bike, seeds.points).length} points`,
      `${plan.value.contents.length} in the box`,
      `about ${Math.round(expected)} min`,
      `${changes.total} changes where no order has under ${bound}`,
    ];
    console.log(`${model} (${bike.kind}): ${figures.join(', ')}`);
    if (inFull) for (const line of steps.map(stepLine)) console.log(line);
  }
  const unused = seeds.steps.filter(({ id }) => !used.has(id)).map(({ id }) => id);
  if (unused.length > 0) console.log(`for other bikes: ${unused.join(', ')}`);
}

type Line = {
  readonly zone: string;
  readonly id: string;
  readonly title: string;
  readonly joint?: { readonly id: string } | undefined;
};

function stepLine({ zone, id, title, joint }: Line, index: number): string {
  const tightens = joint === undefined ? '' : ` [${joint.id}]`;
  return `  ${String(index + 1).padStart(2)} ${zone.padEnd(20)} ${id}: ${title}${tightens}`;
}

function count<T>(rows: readonly T[], isCounted: (row: T) => boolean): number {
  return rows.filter(isCounted).length;
}
