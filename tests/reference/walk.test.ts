/** The walk round a mountain bike and a town bike, as the catalogue and its points describe them. */

import { describe, expect, test } from 'vitest';
import { routeFor } from '../../src/engine/inspection';
import { resolvePlan } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

const points = seedPoints();
const catalogue = seedCatalogue();
const bikes = { mountain: bikeFrom(mountainBike), town: bikeFrom(townBike) };

describe.each(['mountain', 'town'] as const)('the %s bike', (kind) => {
  const route = routeFor(bikes[kind], points);
  const plan = resolvePlan(bikes[kind], catalogue);
  if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);

  // Source: common practice, no source: the walk begins at the front wheel and ends behind.
  test('[N1] begins at the front wheel and ends behind, or with the bike as a whole', () => {
    expect(route[0]?.zone).toBe('front-wheel');
    expect(['rear-wheel', 'whole-bike', 'drivetrain']).toContain(route.at(-1)?.zone);
    const zonesMet = route.map((point) => point.zone);
    expect(zonesMet.indexOf('cockpit')).toBeLessThan(zonesMet.indexOf('seat'));
    expect(zonesMet.indexOf('seat')).toBeLessThan(zonesMet.indexOf('rear-wheel'));
  });

  // Source: common practice, no source: what can hurt the rider when it fails is looked at once more.
  test('[N2] passes every joint whose failure can hurt the rider', () => {
    const confirmed = new Set(route.flatMap((point) => point.reliesOn));
    const risky = plan.value.steps.filter((step) => step.joint?.risk === 'A');
    expect(risky.length).toBeGreaterThan(8);
    expect(risky.map((step) => step.id).filter((id) => !confirmed.has(id))).toEqual([]);
  });

  test('[N3] carries only limits with a source', () => {
    for (const { id, measure } of route)
      if (measure) expect([id, measure.limit.source.length > 5]).toEqual([id, true]);
  });
});

test.each<[fact: string, kind: keyof typeof bikes, brakes: RegExp]>([
  ['a disc bike is asked about discs where the other is not', 'mountain', /rotor|disc|caliper/i],
  ['a rim brake bike is asked about pads and arms where the other is not', 'town', /rim|pad|arm/i],
])('[N2] %s', (_, kind, brakes) => {
  const other = kind === 'mountain' ? bikes.town : bikes.mountain;
  const own = routeFor(bikes[kind], points).filter(({ place }) => place.endsWith('-brake'));
  const others = new Set(routeFor(other, points).map(({ id }) => id));
  const special = own.filter(({ id }) => !others.has(id));
  expect(special.length).toBeGreaterThan(0);
  expect(special.filter((point) => !brakes.test(`${point.name} ${point.look}`))).toEqual([]);
});
