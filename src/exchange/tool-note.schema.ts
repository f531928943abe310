/** What was noted of a tool, as a copy carries it: calibrations, conditions, and bikes called back. */

import * as z from 'zod/mini';
import { certificatePointSchema, wrenchConditions } from '../engine/torque';

const text = z.string();
const count = z.int().check(z.nonnegative());
const points = z.readonly(z.array(certificatePointSchema));
const by = { by: text, at: z.object({ claimed: text, zone: text }) };

export const toolNoteSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('added'), ...by }),
  z.object({ kind: z.literal('changed'), ...by }),
  z.object({
    kind: z.literal('calibrated'),
    ...by,
    on: z.iso.date(),
    dueOn: z.iso.date(),
    since: z.iso.date(),
    reference: z.exactOptional(text),
    found: points,
    foundOutside: z.boolean(),
    adjusted: z.exactOptional(z.object({ how: text, points })),
    isGood: z.boolean(),
    operations: count,
  }),
  z.object({
    kind: z.literal('condition'),
    ...by,
    from: z.enum(wrenchConditions),
    to: z.enum(wrenchConditions),
    on: z.iso.date(),
    reason: text,
  }),
  z.object({
    kind: z.literal('called-back'),
    ...by,
    doubt: text,
    job: text,
    joints: z.readonly(z.array(text)),
    how: z.enum(['record-amended', 'steps-reopened']),
    text,
  }),
]);

export type CopiedToolNote = z.infer<typeof toolNoteSchema>;
