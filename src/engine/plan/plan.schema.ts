/** A plan: the ordered steps for one bike, resolved from the catalogue, with nothing left to look up. */

import * as z from 'zod/mini';
import { materials } from '../bike';
import {
  jointSchema,
  limitSchema,
  measureSchema,
  partSchema,
  stepSchema,
} from './catalogue.schema';

/** A measure with its limits worked out; `suggested` is where to aim, in the same unit. */
export const planMeasureSchema = z.extend(z.omit(measureSchema, { limit: true }), {
  limit: limitSchema,
  suggested: z.optional(z.number()),
});

/** `clamps` answered: the materials that the bolts hold together, where the bike's description says so. */
export const planJointSchema = z.extend(z.omit(jointSchema, { variants: true, clamps: true }), {
  clamps: z.optional(z.array(z.enum(materials))),
});

export const planStepSchema = z.extend(
  z.omit(stepSchema, { when: true, joint: true, measures: true }),
  { joint: z.optional(planJointSchema), measures: z.array(planMeasureSchema) },
);

export const planPartSchema = z.omit(partSchema, { when: true });

export const planSchema = z.object({
  catalogue: z.string(),
  steps: z.array(planStepSchema),
  contents: z.array(planPartSchema),
});

export type Plan = z.infer<typeof planSchema>;
export type PlanStep = z.infer<typeof planStepSchema>;
export type PlanJoint = z.infer<typeof planJointSchema>;
export type PlanMeasure = z.infer<typeof planMeasureSchema>;
export type PlanPart = z.infer<typeof planPartSchema>;
