/** Inspection points: places to look at on the walk from front to rear, and what right looks like. */

import * as z from 'zod/mini';
import { zones } from '../base';
import { places } from '../bike';
import { conditionSchema, measureSchema, planMeasureSchema, sides } from '../plan';

export const severities = ['stop-ride', 'before-hand-over', 'tell-customer'] as const;
export const verdicts = ['good', 'adjusted', 'wrong'] as const;

export const pointSchema = z.object({
  id: z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
  zone: z.enum(zones),
  place: z.enum(places),
  side: z.optional(z.enum(sides)),
  name: z.string(),
  /** What to do: one sentence, imperative. */
  look: z.string(),
  /** What it looks, feels or sounds like when it is right. */
  right: z.string(),
  caution: z.optional(z.string()),
  /** The severity offered first when it is wrong. */
  severity: z.enum(severities),
  when: z.optional(conditionSchema),
  /** Steps whose result this point confirms: it goes stale with them. */
  reliesOn: z._default(z.array(z.string()), []),
  measure: z.optional(measureSchema),
  source: z._default(z.string(), 'common practice, no source'),
});

/** A point on one bike's route, with its limit worked out. */
export const routePointSchema = z.extend(z.omit(pointSchema, { when: true, measure: true }), {
  measure: z.optional(planMeasureSchema),
});

export type Point = z.infer<typeof pointSchema>;
export type RoutePoint = z.infer<typeof routePointSchema>;
export type Severity = (typeof severities)[number];
export type Verdict = (typeof verdicts)[number];
