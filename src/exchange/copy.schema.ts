/** A copy of a whole shop as one JSON file: what stands where. */

import * as z from 'zod/mini';
import { entrySchema } from '../engine/integrity';
import { jobPlanSchema, roles } from '../engine/job';
import { catalogueVersionSchema } from '../engine/plan';
import { figureSchema } from '../engine/torque';
import { keptToolSchema } from './kept-tool.schema';

export const copyFormat = 'standbook-copy';
export const copyVersion = 1;

const id = z.string().check(z.minLength(1));
const text = z.string();
const digest = z.string().check(z.regex(/^[0-9a-f]{64}$/));

export const copySchema = z.object({
  format: z.literal(copyFormat),
  version: z.literal(copyVersion),
  /** When it was written, as the device's clock claimed. */
  at: text,
  shop: z.optional(z.object({ name: text, market: text, demo: z.optional(z.boolean()) })),
  /** Each job's whole log; what lists show of it is worked out again when it is read. */
  jobs: z.array(z.object({ job: id, heads: z.array(digest), entries: z.array(entrySchema) })),
  plans: z.array(z.object({ digest, plan: jobPlanSchema })),
  people: z.array(z.object({ id, name: text, roles: z.array(z.enum(roles)), active: z.boolean() })),
  customers: z.array(z.object({ digest, salt: text, name: text, contact: z.exactOptional(text) })),
  tools: z.array(keptToolSchema),
  figures: z.array(z.object({ id, make: text, model: text, joint: text, figure: figureSchema })),
  /** What the shop has changed in the catalogue; older copies say nothing of it. */
  catalogueVersions: z._default(z.array(catalogueVersionSchema), []),
  /** Photos and drawn signatures. */
  blobs: z.array(z.object({ digest, type: text, base64: text })),
  /** Public keys (JWK), by whose they are: `person:…` or `device`. They show who signed. */
  publicKeys: z.array(z.object({ id, keys: z.array(z.record(z.string(), z.unknown())) })),
});

export type Copy = z.infer<typeof copySchema>;
