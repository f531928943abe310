/** The data the app is born with, each file checked by its schema where it comes in. */

import * as z from 'zod/mini';
import { zones } from '../engine/base';
import { type Bike, bikeSchema } from '../engine/bike';
import { type Point, pointSchema } from '../engine/inspection';
import { type MarketRules, marketSchema } from '../engine/market';
import {
  type Catalogue,
  catalogueSchema,
  jointSchema,
  partSchema,
  stepSchema,
} from '../engine/plan';
import {
  demoBikesSchema,
  demoFiguresSchema,
  demoJobsSchema,
  demoPeopleSchema,
  demoToolsSchema,
} from './demo.schema';

/** Each is its own chunk, fetched when first needed; the service worker keeps them all on the device. */
const stepFiles = import.meta.glob<unknown>('../../seeds/steps/*.json', { import: 'default' });
const marketFiles = import.meta.glob<unknown>('../../seeds/markets/*.json', { import: 'default' });

const stepsFileSchema = z.object({ steps: z.array(stepSchema) });
const jointsFileSchema = z.object({ joints: z.array(jointSchema) });
const partsFileSchema = z.object({ parts: z.array(partSchema) });
const pointsFileSchema = z.object({ points: z.array(pointSchema) });

export interface LoadedCatalogue {
  readonly catalogue: Catalogue;
  readonly points: readonly Point[];
  readonly markets: readonly MarketRules[];
}

/** Counts up with every release that changes steps, joints, contents or points. */
const catalogueVersion = '1.0';

/** Steps stand in the order of the zones, then as their file has them. */
export async function loadCatalogue(): Promise<LoadedCatalogue> {
  const [stepLists, joints, parts, points, markets] = await Promise.all([
    Promise.all(zones.map((zone) => stepFiles[`../../seeds/steps/${zone}.json`]?.())),
    import('../../seeds/joints.json'),
    import('../../seeds/parts.json'),
    import('../../seeds/points.json'),
    Promise.all(Object.values(marketFiles).map((load) => load())),
  ]);
  return {
    catalogue: catalogueSchema.parse({
      version: catalogueVersion,
      steps: stepLists.flatMap((file) => stepsFileSchema.parse(file).steps),
      joints: jointsFileSchema.parse(joints.default).joints,
      parts: partsFileSchema.parse(parts.default).parts,
    }),
    points: pointsFileSchema.parse(points.default).points,
    markets: markets.map((file) => marketSchema.parse(file)),
  };
}

const bikesToTryFileSchema = z.object({ bikes: z.array(bikeSchema) });

/** Bikes on which a change of the catalogue is tried, ordinary ones first; see `scripts/bikes-to-try.ts`. */
export async function loadBikesToTry(): Promise<readonly Bike[]> {
  const file = await import('../../seeds/bikes-to-try.json');
  return bikesToTryFileSchema.parse(file.default).bikes;
}

/** The invented shop; bikes, people and tools of nobody. */
export async function loadDemoSeeds() {
  const [people, tools, bikes, figures, jobs] = await Promise.all([
    import('../../seeds/demo/people.json'),
    import('../../seeds/demo/tools.json'),
    import('../../seeds/demo/bikes.json'),
    import('../../seeds/demo/figures.json'),
    import('../../seeds/demo/jobs.json'),
  ]);
  return {
    ...demoPeopleSchema.parse(people.default),
    ...demoToolsSchema.parse(tools.default),
    ...demoBikesSchema.parse(bikes.default),
    ...demoFiguresSchema.parse(figures.default),
    ...demoJobsSchema.parse(jobs.default),
  };
}
