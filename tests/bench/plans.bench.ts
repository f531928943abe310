/** How long it takes to plan a thousand bikes thrown together by the dice, and to prove how good an order is. */

import { type Bike, bikeSchema } from '../../src/engine/bike';
import { orderQuality, type Plan, resolvePlan } from '../../src/engine/plan';
import { bikeFor, bikeSpace } from '../support/bike-space';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { rowByDice } from '../support/covering-array';
import { seedCatalogue } from '../support/seed-catalogue';
import { said } from './quantiles';

const wanted = 1000;
const catalogue = seedCatalogue();

const bikes: Bike[] = [];
for (let dice = 1; bikes.length < wanted; dice += 1) {
  const row = rowByDice(bikeSpace, dice);
  if (row !== undefined) bikes.push(bikeFor(row));
}

for (const bike of bikes.slice(0, 50)) resolvePlan(bike, catalogue); // warm
const plans: Plan[] = [];
const refused = new Map<string, number>();
const times = bikes.map((bike) => {
  const began = performance.now();
  const plan = resolvePlan(bike, catalogue);
  const took = performance.now() - began;
  if (plan.ok) plans.push(plan.value);
  else refused.set(plan.refusal.code, (refused.get(plan.refusal.code) ?? 0) + 1);
  return took;
});

const sizes = plans.map(({ steps }) => steps.length);
console.log(`${wanted} random bikes, ${catalogue.steps.length} steps in the catalogue`);
console.log(`plans of ${Math.min(...sizes)} to ${Math.max(...sizes)} steps`);
console.log(
  `refused: ${[...refused].map(([code, count]) => `${code} ${count}`).join(', ') || 'none'}`,
);
console.log(said('one plan, resolved and ordered', times));

for (const [name, bike] of [
  ['mountain bike', bikeFrom(mountainBike)],
  ['town bike', bikeSchema.parse(townBike)],
] as const) {
  const plan = resolvePlan(bike, catalogue);
  if (!plan.ok) continue;
  const began = performance.now();
  const { changes, bound, ratio } = orderQuality(plan.value);
  const took = performance.now() - began;
  const percent = ((ratio - 1) * 100).toFixed(1);
  console.log(
    `${name}: ${changes.total} changes (zone ${changes.zone}, tool ${changes.tool}, side ${changes.side}), no order has under ${bound}: within ${percent} %, proven in ${took.toFixed(0)} ms`,
  );
}
