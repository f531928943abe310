/** What a shop changes in the catalogue it was born with: versions, each with who, when and why. */

import * as z from 'zod/mini';
import { zones } from '../base';
import { places } from '../bike';
import { figureSchema } from '../torque';
import { hands, layoutShapes, preparations, risks, sides } from './catalogue.schema';
import { givenConditionSchema } from './condition.schema';

/** Neither control characters nor marks that turn the direction of writing: what is read is what is stored. */
const plainText = /^[^\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]*$/u;

const id = z.string().check(z.maxLength(60), z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
const text = (least: number, most: number) =>
  z.string().check(z.minLength(least), z.maxLength(most), z.regex(plainText));
const sentence = text(2, 600);
const name = text(1, 80);
const newtonMetres = z.number().check(z.positive(), z.maximum(500));
const minutes = z.number().check(z.positive(), z.maximum(600));
const effort = z.tuple([minutes, minutes, minutes]);
const idList = z._default(z.array(id).check(z.maxLength(40)), []);

export const ownStepSchema = z.strictObject({
  id,
  zone: z.enum(zones),
  place: z.enum(places),
  side: z.exactOptional(z.enum(sides)),
  title: text(2, 80),
  how: sentence,
  why: sentence,
  right: sentence,
  wrong: z.exactOptional(sentence),
  wayRound: z.exactOptional(sentence),
  tools: z._default(z.array(name).check(z.maxLength(12)), []),
  preparation: z.exactOptional(z.strictObject({ kind: z.enum(preparations), note: sentence })),
  cautions: z._default(z.array(sentence).check(z.maxLength(12)), []),
  when: z.exactOptional(givenConditionSchema),
  after: idList,
  reliesOn: idList,
  joint: z.exactOptional(id),
  effort,
});

export const ownJointSchema = z.strictObject({
  id,
  name,
  bolts: z.int().check(z.positive(), z.maximum(64)),
  layout: z.enum(layoutShapes),
  thread: name,
  hand: z.enum(hands),
  bit: name,
  preparation: z.enum(preparations),
  preparationNote: sentence,
  usual: z.strictObject({ min: newtonMetres, max: newtonMetres }),
  risk: z.enum(risks),
  source: sentence,
});

export const changedWordsSchema = z.strictObject({
  title: z.exactOptional(text(2, 80)),
  how: z.exactOptional(sentence),
  why: z.exactOptional(sentence),
  right: z.exactOptional(sentence),
  wrong: z.exactOptional(sentence),
  wayRound: z.exactOptional(sentence),
  /** All of them: the catalogue's own have to be among them. */
  cautions: z.exactOptional(z.array(sentence).check(z.maxLength(12))),
});

export const shopChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('add-step'),
    step: ownStepSchema,
    /** Points of the walk that confirm it, besides what they confirm already. */
    lookedAtBy: idList,
  }),
  z.strictObject({ kind: z.literal('change-words'), step: id, words: changedWordsSchema }),
  z.strictObject({ kind: z.literal('switch-off'), step: id }),
  z.strictObject({ kind: z.literal('switch-on'), step: id }),
  z.strictObject({ kind: z.literal('set-effort'), step: id, effort }),
  z.strictObject({ kind: z.literal('add-joint'), joint: ownJointSchema }),
  z.strictObject({
    /** Approved by the version's author, on its day; limits in N·m. */
    kind: z.literal('approve-figure'),
    make: name,
    model: name,
    joint: id,
    figure: z.strictObject(z.omit(figureSchema, { source: true }).shape),
  }),
  /** The changes of that version no longer count. */
  z.strictObject({ kind: z.literal('take-back'), version: text(1, 64) }),
]);

export const catalogueVersionSchema = z.strictObject({
  id: text(1, 64),
  /** One more than the highest its author had seen. */
  version: z.int().check(z.positive(), z.maximum(1_000_000)),
  /** What the clock claimed, with its zone. */
  at: z.strictObject({ claimed: z.iso.datetime({ offset: true }), zone: text(1, 64) }),
  by: name,
  reason: text(3, 400),
  changes: z.array(shopChangeSchema).check(z.minLength(1), z.maxLength(200)),
});

export type OwnStep = z.infer<typeof ownStepSchema>;
export type OwnJoint = z.infer<typeof ownJointSchema>;
export type ChangedWords = z.infer<typeof changedWordsSchema>;
export type ShopChange = z.infer<typeof shopChangeSchema>;
export type CatalogueVersion = z.infer<typeof catalogueVersionSchema>;
