/** The invented shop that the app can open with: people, tools, boxed bikes, figures and the jobs it begins with. */

import * as z from 'zod/mini';
import { bikeSchema } from '../engine/bike';
import { severities } from '../engine/inspection';
import { holdReasons, roles } from '../engine/job';
import { adapterSchema, figureSchema, wrenchConditions, wrenchSchema } from '../engine/torque';

const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
const boardName = z.string().check(z.regex(/^[A-Z]$/));
const text = z.string().check(z.minLength(1));
const daysFromStart = z.int().check(z.minimum(-730), z.maximum(730));
const daysAgo = z.int().check(z.minimum(0), z.maximum(730));
const timeOfDay = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

export const demoPeopleSchema = z.object({
  shop: z.object({ name: text, market: text }),
  people: z.array(
    z.object({
      id,
      name: text,
      roles: z.array(z.enum(roles)).check(z.minLength(1)),
      /** Shown to whoever tries the demo. */
      pin: z.string().check(z.regex(/^\d{6}$/)),
    }),
  ),
});

const { calibratedOn: _calibratedOn, dueOn: _dueOn, id: _id, ...wrenchShape } = wrenchSchema.shape;

/** Dates count from the day of the first start, so that the board is as fresh in any year. */
export const demoToolsSchema = z.object({
  wrenches: z.array(
    z.object({
      id: boardName,
      ...wrenchShape,
      calibratedDaysAgo: daysAgo,
      dueInDays: daysFromStart,
      /** What happened to it, first to last; before the first it was in service. */
      notes: z.optional(
        z.array(
          z.object({
            to: z.enum(wrenchConditions),
            daysAgo,
            time: timeOfDay,
            by: id,
            reason: text,
          }),
        ),
      ),
    }),
  ),
  adapters: z.array(
    z.object({
      id,
      name: text,
      /** The wrench that its grip was measured on; on another one the grip is another. */
      wrench: boardName,
      ...adapterSchema.shape,
    }),
  ),
});

export const demoBikesSchema = z.object({ bikes: z.array(bikeSchema) });

export const demoFiguresSchema = z.object({
  figures: z.array(z.object({ make: text, model: text, joint: id, figure: figureSchema })),
  /** What stands on the parts themselves, for the joints that the book leaves out. */
  markings: z.array(z.object({ make: text, model: text, joint: id, printed: text })),
});

const findingSchema = z.object({
  point: id,
  severity: z.enum(severities),
  text,
  closedHow: z.optional(text),
});

const jobShape = {
  /** The frame number of one of the demo's bikes. */
  bike: text,
  receivedBy: id,
  receivedDaysAgo: daysAgo,
  cartonDamage: z.optional(text),
};

const dueSchema = z.object({
  inDays: daysFromStart,
  time: timeOfDay,
});

export const demoJobsSchema = z.object({
  jobs: z.array(
    z.discriminatedUnion('state', [
      z.object({ state: z.literal('boxed'), ...jobShape, due: z.optional(dueSchema) }),
      z.object({
        state: z.literal('on-the-stand'),
        ...jobShape,
        due: dueSchema,
        builder: id,
        stepsDone: z.int().check(z.positive()),
      }),
      z.object({
        state: z.literal('on-hold'),
        ...jobShape,
        due: dueSchema,
        builder: id,
        stepsDone: z.int().check(z.minimum(0)),
        for: z.enum(holdReasons),
        note: text,
        missing: z.array(id),
      }),
      z.object({ state: z.literal('to-be-checked'), ...jobShape, due: dueSchema, builder: id }),
      z.object({
        state: z.literal('handed-over'),
        ...jobShape,
        daysAgo,
        builder: id,
        checker: id,
        customer: z.object({ name: text, contact: z.optional(text) }),
        findings: z.array(findingSchema),
      }),
    ]),
  ),
});

export type DemoPeople = z.infer<typeof demoPeopleSchema>;
export type DemoTools = z.infer<typeof demoToolsSchema>;
export type DemoBikes = z.infer<typeof demoBikesSchema>;
export type DemoFigures = z.infer<typeof demoFiguresSchema>;
export type DemoJobs = z.infer<typeof demoJobsSchema>;
export type DemoJob = DemoJobs['jobs'][number];
