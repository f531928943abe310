/**
 * Writes the bikes on which a change of the catalogue is tried: ordinary ones first, so that the one that is named is a
 * bike people know, then so many unlike ones that every two features that may meet do meet on one of them.
 * Only bikes whose plan is sound by the catalogue as it is born are kept.
 */

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Bike } from '../src/engine/bike';
import { planFaults, resolvePlan } from '../src/engine/plan';
import { bikeFor, bikeSpace } from '../tests/support/bike-space';
import { bikeFrom, mountainBike, townBike } from '../tests/support/bikes';
import { coveringArray } from '../tests/support/covering-array';
import { rearHalfBikes } from '../tests/support/rear-half-bikes';
import { seedCatalogue, seedPoints } from '../tests/support/seed-catalogue';

const seed = 20261125;
const catalogue = seedCatalogue();
const points = seedPoints();

function isSound(bike: Bike): boolean {
  const plan = resolvePlan(bike, catalogue);
  return plan.ok && planFaults(bike, plan.value, catalogue, points).length === 0;
}

const ordinary = [bikeFrom(mountainBike), bikeFrom(townBike), ...Object.values(rearHalfBikes)];
const unlike = coveringArray(bikeSpace, 2, seed).rows.map(bikeFor);
const kept = [...ordinary, ...unlike].filter(isSound);
const file = 'seeds/bikes-to-try.json';
writeFileSync(file, JSON.stringify({ bikes: kept }));
execFileSync('npx', ['biome', 'format', '--write', file]);
console.log(
  `${kept.length} of ${ordinary.length + unlike.length} bikes are kept: ${ordinary.filter(isSound).length} ordinary ones first`,
);
