/** The catalogue that the app is born with, read from its seeds and parsed through its schema. */

import { readFileSync } from 'node:fs';
import { zones } from '../../src/engine/base';
import { type Point, pointSchema } from '../../src/engine/inspection';
import { type Catalogue, catalogueSchema } from '../../src/engine/plan';

const seed = (path: string): Record<string, unknown> =>
  JSON.parse(readFileSync(new URL(`../../seeds/${path}`, import.meta.url), 'utf8'));

/** Steps stand in the order of the zones, then of their files. */
export function seedCatalogue(): Catalogue {
  return catalogueSchema.parse({
    version: 'seeds',
    steps: zones.flatMap((zone) => seed(`steps/${zone}.json`).steps),
    joints: seed('joints.json').joints,
    parts: seed('parts.json').parts,
  });
}

export function seedPoints(): readonly Point[] {
  const { points } = seed('points.json');
  if (!Array.isArray(points)) throw new Error('points.json holds a list of points');
  return points.map((point) => pointSchema.parse(point));
}
