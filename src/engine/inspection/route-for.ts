/** The route round one bike: the points that it has, in the order in which the walk meets them. */

import { compareNumbers } from '../base';
import { type Bike, factsOf, places } from '../bike';
import { holds, type PlanMeasure, workedMeasure } from '../plan';
import type { Point, RoutePoint } from './point.schema';

/**
 * The points whose conditions hold, front to rear in the shape of an M: by place, then as listed. Limits that
 * depend on the bike are worked out (mm, kPa); where its markings give none, the measure carries no limit.
 */
export function routeFor(bike: Bike, points: readonly Point[]): readonly RoutePoint[] {
  const facts = factsOf(bike);
  return points
    .filter((point) => holds(point.when, facts))
    .sort((a, b) => compareNumbers(places.indexOf(a.place), places.indexOf(b.place)))
    .map(({ when: _, measure, ...point }) => ({
      ...point,
      ...(measure && { measure: limited(bike, measure) }),
    }));
}

function limited(bike: Bike, measure: NonNullable<Point['measure']>): PlanMeasure {
  const worked = workedMeasure(bike, measure);
  if (worked.ok) return worked.value;
  // The plan of such a bike is refused with the reason; here, nothing may be judged good against a guess.
  const { limit: _, ...rest } = measure;
  return { ...rest, limit: { source: 'no limit: the marking gives none, read it on the part' } };
}
