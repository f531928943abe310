/** All that is frozen when a job opens: the bike, its steps, contents, route and the figures the shop already knew. */

import * as z from 'zod/mini';
import { bikeSchema } from '../bike';
import { routePointSchema } from '../inspection';
import { planSchema } from '../plan';
import { figureSchema } from '../torque';

export const jobPlanSchema = z.extend(planSchema, {
  bike: bikeSchema,
  market: z.string(),
  frontBrakeLever: z.enum(['left', 'right', 'none']),
  points: z.array(routePointSchema),
  /** By joint: figures from the maker's documents or approved by the shop for this make and model. */
  figures: z.record(z.string(), figureSchema),
});

export type JobPlan = z.infer<typeof jobPlanSchema>;
