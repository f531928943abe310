/** The catalogue: steps, joints and box contents for every kind of bike, with the conditions under which each applies. */

import * as z from 'zod/mini';
import { zones } from '../base';
import { places } from '../bike';
import { conditionSchema } from './condition.schema';

export const preparations = ['grease', 'threadlocker', 'assembly-compound', 'oil', 'dry'] as const;
export const hands = ['right', 'left'] as const;
export const risks = ['A', 'B', 'C'] as const;
export const sides = ['left', 'right', 'both', 'middle'] as const;
export const layoutShapes = ['line', 'pair', 'rectangle', 'ring', 'opposed'] as const;
export const measureUnits = ['mm', 'kPa', '°', 'N', 'turns', '%'] as const;
/** Limits that depend on the bike and are worked out when its plan is resolved. */
export const limitRules = [
  'tyre-window-front',
  'tyre-window-rear',
  'seat-post-insertion',
  'quill-insertion',
] as const;

/** Questions about the bike that answer what a joint's bolts hold together. */
export const materialQuestions = [
  'frame.material',
  'fork.steerer',
  'steering.barMaterial',
  'seat.postMaterial',
] as const;

const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
const sentence = z.string().check(z.minLength(2));
const newtonMetres = z.number().check(z.positive());

export const limitSchema = z.object({
  min: z.optional(z.number()),
  max: z.optional(z.number()),
  source: sentence,
});

export const measureSchema = z.object({
  id,
  name: sentence,
  /** How to take it, in one sentence. */
  how: sentence,
  unit: z.enum(measureUnits),
  limit: z.union([limitSchema, z.object({ rule: z.enum(limitRules) })]),
});

export const usualRangeSchema = z.object({ min: newtonMetres, max: newtonMetres });

export const jointSchema = z.object({
  id,
  name: sentence,
  bolts: z.int().check(z.positive()),
  layout: z.enum(layoutShapes),
  /** As the trade writes it: `M5`, `M8×1`, `9/16 in × 20`. */
  thread: sentence,
  hand: z.enum(hands),
  /** The bit or socket, for example `4 mm hex` or `15 mm open end`. */
  bit: sentence,
  preparation: z.enum(preparations),
  preparationNote: sentence,
  /** What the bolts hold together, as far as the bike's description says; absent where it says nothing. */
  clamps: z.optional(z.array(z.enum(materialQuestions)).check(z.minLength(1))),
  /** Common practice, N·m: to warn with, never a specification. */
  usual: usualRangeSchema,
  risk: z.enum(risks),
  source: sentence,
  /** The first variant whose condition holds replaces what it names. */
  variants: z._default(
    z.array(
      z.object({
        when: conditionSchema,
        bolts: z.optional(z.int().check(z.positive())),
        layout: z.optional(z.enum(layoutShapes)),
        thread: z.optional(sentence),
        bit: z.optional(sentence),
        preparation: z.optional(z.enum(preparations)),
        preparationNote: z.optional(sentence),
        usual: z.optional(usualRangeSchema),
        source: z.optional(sentence),
      }),
    ),
    [],
  ),
});

export const stepSchema = z.object({
  id,
  zone: z.enum(zones),
  place: z.enum(places),
  side: z.optional(z.enum(sides)),
  /** Imperative, one action, at most about 45 characters. */
  title: sentence,
  /** How to do it: one to three short sentences. */
  how: sentence,
  why: sentence,
  /** What it looks, feels or sounds like when it is right. */
  right: sentence,
  /** How it goes wrong. */
  wrong: z.optional(sentence),
  /** Which way round, where it matters. */
  wayRound: z.optional(sentence),
  /** What the job knows of this very bike and market, and the step has to be told. */
  tells: z.optional(z.enum(['front-brake-lever'])),
  tools: z._default(z.array(sentence), []),
  preparation: z.optional(z.object({ kind: z.enum(preparations), note: sentence })),
  cautions: z._default(z.array(sentence), []),
  when: z.optional(conditionSchema),
  /** Order only: these come before, where the bike has them. */
  after: z._default(z.array(id), []),
  /** The result holds only while theirs holds, where the bike has them. */
  reliesOn: z._default(z.array(id), []),
  /** Things from the box that it needs. */
  parts: z._default(z.array(id), []),
  joint: z.optional(id),
  measures: z._default(z.array(measureSchema), []),
  /** Least, likely and most, in minutes. */
  effort: z.tuple([
    z.number().check(z.positive()),
    z.number().check(z.positive()),
    z.number().check(z.positive()),
  ]),
});

export const partKinds = ['part', 'packing', 'paper'] as const;

export const partSchema = z.object({
  id,
  name: sentence,
  kind: z.enum(partKinds),
  when: z.optional(conditionSchema),
  /** Set aside for the customer. */
  keep: z._default(z.boolean(), false),
});

export const catalogueSchema = z.object({
  version: sentence,
  steps: z.array(stepSchema),
  joints: z.array(jointSchema),
  parts: z.array(partSchema),
});

export type Catalogue = z.infer<typeof catalogueSchema>;
export type Step = z.infer<typeof stepSchema>;
export type Joint = z.infer<typeof jointSchema>;
export type Part = z.infer<typeof partSchema>;
export type Measure = z.infer<typeof measureSchema>;
export type Limit = z.infer<typeof limitSchema>;
export type LimitRule = (typeof limitRules)[number];
export type MaterialQuestion = (typeof materialQuestions)[number];
export type Preparation = (typeof preparations)[number];
