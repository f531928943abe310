/** What the seeds deal with, of all that a bike may have: by which steps, joints and points. */

import { bikeSchema, type Feature, questions } from '../src/engine/bike';
import { type Condition, featuresToHandle, groundsOf } from '../src/engine/plan';
import type { Seeds } from './seed-files';

export interface Coverage {
  readonly feature: Feature;
  /** How many steps, joint variants and points ask for it. */
  readonly steps: number;
  readonly variants: number;
  readonly points: number;
}

/** One row for each answer of the description that asks for work, or for a look. */
export function coverageOf({ steps, joints, points }: Seeds): readonly Coverage[] {
  const variants = joints.flatMap((joint) => joint.variants.map(({ when }) => when));
  return allFeatures().map((feature) => ({
    feature,
    steps: asking(
      steps.map(({ when }) => when),
      feature,
    ),
    variants: asking(variants, feature),
    points: asking(
      points.map(({ when }) => when),
      feature,
    ),
  }));
}

function allFeatures(): readonly Feature[] {
  return questions.flatMap((question) =>
    answersTo(question).flatMap((answer) =>
      featuresToHandle({ [question]: question === 'extras' ? [String(answer)] : answer }),
    ),
  );
}

function asking(conditions: readonly (Condition | undefined)[], feature: Feature): number {
  return conditions.filter((when) => mentions(when, feature)).length;
}

/** Whether the condition asks for this feature by name, in whatever company. */
function mentions(when: Condition | undefined, { question, answer }: Feature): boolean {
  if (when === undefined || 'not' in when) return false;
  if ('all' in when) return when.all.some((part) => mentions(part, { question, answer }));
  if ('any' in when) return when.any.some((part) => mentions(part, { question, answer }));
  const facts = { [question]: 'has' in when ? [String(answer)] : answer };
  return groundsOf(when, facts).length > 0;
}

type SchemaLike = { readonly def: { readonly type: string } & Record<string, unknown> };

/** The answers of a list of choices, a yes or no, or the few counts that change the work. */
function answersTo(question: string): readonly (string | number | boolean)[] {
  if (question === 'gears.chainrings') return [1, 2, 3];
  const { def } = question.split('.').reduce(
    (schema: SchemaLike, name) => {
      const shape = bare(schema).def.shape as Record<string, SchemaLike>; // the question is known, so this is an object
      return bare(shape[name] as SchemaLike);
    },
    bikeSchema as unknown as SchemaLike, // zod's own description of a schema
  );
  if (def.type === 'boolean') return [true, false];
  const choices = def.type === 'array' ? (def.element as SchemaLike).def : def;
  return choices.type === 'enum' ? Object.values(choices.entries as Record<string, string>) : [];
}

function bare(schema: SchemaLike): SchemaLike {
  const isWrapper = schema.def.type === 'default' || schema.def.type === 'optional';
  return isWrapper ? bare(schema.def.innerType as SchemaLike) : schema;
}
