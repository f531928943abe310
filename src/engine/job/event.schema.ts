/** What happened to a job, in the past tense. Stored for ever: a changed shape is a new version with an upcast on reading. */

import * as z from 'zod/mini';
import { bikeSchema } from '../bike';
import { severities, verdicts } from '../inspection';
import { figureSchema, readingVerdicts } from '../torque';

const id = z.string().check(z.minLength(1));
const ids = z.array(id);
const digest = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const text = z.string();
const reason = z.string().check(z.minLength(1));

export const partStates = ['present', 'missing', 'damaged'] as const;
export const holdReasons = ['part', 'decision', 'customer', 'tool', 'other'] as const;
export const meanings = ['built', 'checked', 'received'] as const;

/** The wrench as it was on the board that day: enough to judge the joint again months later. */
const wrenchUsedSchema = z.object({
  id,
  name: text,
  type: text,
  class: text,
  unit: text,
  dueOn: text,
  deviation: z.number(),
});

const adapterUsedSchema = z.object({
  id,
  name: text,
  grip: z.number(),
  offset: z.number(),
  angle: z.number(),
});

/** What an indicating wrench showed at one bolt; a bolt that was read again stands here again. */
const readingTakenSchema = z.object({
  /** From 1, as the bolts are drawn. */
  bolt: z.int().check(z.positive()),
  /** N·m at the wrench. */
  value: z.number().check(z.positive()),
  /** N·m: half of the last digit that was shown, by which the value may have been rounded. */
  halfStep: z.optional(z.number().check(z.positive())),
  /** As the wrench typed it. */
  text,
  judged: z.enum(readingVerdicts),
});

export const passSchema = z.object({
  joint: id,
  pass: z.int(),
  of: z.int(),
  wrench: wrenchUsedSchema,
  adapter: z.optional(adapterUsedSchema),
  /** N·m at the wrench, and the same on its own scale. */
  setPoint: z.number(),
  onScale: z.number(),
  /** In the order in which they were taken; absent where nobody read a wrench. */
  readings: z.optional(z.array(readingTakenSchema)),
  /** Made by somebody who was an apprentice and nothing else on that day. */
  byLearner: z.optional(z.literal(true)),
});

export const tightenedSchema = z.extend(passSchema, {
  figure: figureSchema,
  /** N·m: where each bolt of the joint ends when the wrench is within its deviation. */
  jointLow: z.number(),
  jointHigh: z.number(),
});

export const eventSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('box-received'),
    v: z.literal(1),
    bike: bikeSchema,
    due: z.optional(text),
    delivery: z.optional(text),
    cartonDamage: z.optional(text),
    photos: z.array(digest),
  }),
  z.object({ kind: z.literal('bike-described'), v: z.literal(1), bike: bikeSchema }),
  z.object({ kind: z.literal('due-set'), v: z.literal(1), due: z.optional(text) }),
  z.object({ kind: z.literal('job-opened'), v: z.literal(1), plan: digest, market: id }),
  z.object({
    kind: z.literal('contents-checked'),
    v: z.literal(1),
    parts: z.array(z.object({ part: id, state: z.enum(partStates), note: z.optional(text) })),
  }),
  z.object({ kind: z.literal('step-done'), v: z.literal(1), step: id }),
  z.object({ kind: z.literal('step-reopened'), v: z.literal(1), step: id, reason }),
  z.object({ kind: z.literal('step-set-aside'), v: z.literal(1), step: id, reason }),
  z.object({ kind: z.literal('figure-entered'), v: z.literal(1), joint: id, figure: figureSchema }),
  z.extend(passSchema, { kind: z.literal('pass-made'), v: z.literal(1) }),
  z.extend(tightenedSchema, { kind: z.literal('joint-tightened'), v: z.literal(1) }),
  z.object({
    kind: z.literal('joint-confirmed'),
    v: z.literal(1),
    joint: id,
    /** The entry that tightened it: what is done to the joint later is not confirmed. */
    tightened: digest,
  }),
  z.object({
    kind: z.literal('measure-taken'),
    v: z.literal(1),
    /** The step or point it belongs to. */
    at: id,
    measure: id,
    value: z.number(),
    unit: text,
    judged: z.enum(['inside', 'outside', 'undecided']),
  }),
  z.object({
    kind: z.literal('point-looked-at'),
    v: z.literal(1),
    point: id,
    verdict: z.enum(verdicts),
    note: z.optional(text),
  }),
  z.object({
    kind: z.literal('finding-raised'),
    v: z.literal(1),
    finding: id,
    /** The point or step it was found at. */
    at: z.optional(id),
    severity: z.enum(severities),
    text: reason,
    photos: z.array(digest),
  }),
  z.object({ kind: z.literal('finding-closed'), v: z.literal(1), finding: id, how: reason }),
  z.object({ kind: z.literal('finding-allowed'), v: z.literal(1), finding: id, reason }),
  z.object({ kind: z.literal('job-held'), v: z.literal(1), for: z.enum(holdReasons), note: text }),
  z.object({ kind: z.literal('job-resumed'), v: z.literal(1) }),
  z.object({
    kind: z.literal('signed'),
    v: z.literal(1),
    meaning: z.enum(meanings),
    /** Printed name of a member of the shop; a customer is named only by digest. */
    name: z.optional(text),
    customer: z.optional(digest),
    heads: ids,
    /** Compact JWS (ES256) over the job, the heads and the meaning. */
    jws: text,
    /** Digest of the drawn strokes, for a signature on the screen. */
    strokes: z.optional(digest),
  }),
  z.object({
    kind: z.literal('sent-back'),
    v: z.literal(1),
    steps: ids,
    points: ids,
    reason,
  }),
  z.object({
    kind: z.literal('handed-over'),
    v: z.literal(1),
    customer: digest,
    told: ids,
    /** ISO date of the first check. */
    firstCheck: text,
    /** The lever that works the front brake, as the customer was told. */
    frontBrakeLever: z.enum(['left', 'right', 'none']),
  }),
  z.object({ kind: z.literal('record-amended'), v: z.literal(1), text: reason }),
]);

export type JobEvent = z.infer<typeof eventSchema>;
export type EventOf<K extends JobEvent['kind']> = Extract<JobEvent, { kind: K }>;
export type PartState = (typeof partStates)[number];
export type HoldReason = (typeof holdReasons)[number];
export type Meaning = (typeof meanings)[number];
export type WrenchUsed = z.infer<typeof wrenchUsedSchema>;
export type AdapterUsed = z.infer<typeof adapterUsedSchema>;
export type ReadingTaken = z.infer<typeof readingTakenSchema>;
export type PassMade = z.infer<typeof passSchema>;
export type Tightened = z.infer<typeof tightenedSchema>;
