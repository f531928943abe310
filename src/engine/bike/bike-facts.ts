/** Questions that a bike's description answers: the vocabulary in which the catalogue's conditions ask. */

import { assumedAnswers } from './assumed-answers';
import { type Bike, bikeSchema } from './bike.schema';

/** The answers to every question about a bike, by question; a list answers "has". */
export type BikeFacts = Readonly<Record<string, string | number | boolean | readonly string[]>>;

/**
 * Flattens a bike into answers by dotted question, for example `front.brake` → `linear-pull`.
 * Where the description leaves something open that the work needs to know, the commonest answer stands in; a question
 * about a part that the bike lacks has no answer.
 */
export function factsOf(bike: Bike): BikeFacts {
  const facts: Record<string, string | number | boolean | readonly string[]> = {};
  collect(bike as unknown as Record<string, unknown>, '', facts); // a parsed bike is a plain record of answers
  for (const [question, answer] of Object.entries(assumedAnswers(bike))) {
    if (answer === undefined) delete facts[question];
    else facts[question] = answer;
  }
  return facts;
}

function collect(
  part: Readonly<Record<string, unknown>>,
  prefix: string,
  facts: Record<string, string | number | boolean | readonly string[]>,
): void {
  for (const [name, value] of Object.entries(part)) {
    const question = prefix + name;
    if (Array.isArray(value)) facts[question] = value.map(String);
    else if (typeof value === 'object' && value !== null)
      collect(value as Record<string, unknown>, `${question}.`, facts); // nested parts are records too
    else if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
      facts[question] = value;
  }
}

/** Every question a condition may ask, read from the schema itself, so that a misspelt one is found. */
export const questions: readonly string[] = questionsIn(bikeSchema, '');

type SchemaLike = { readonly def: { readonly type: string } & Record<string, unknown> };

function questionsIn(schema: unknown, prefix: string): readonly string[] {
  const { def } = schema as SchemaLike; // zod's own description of a schema
  if (def.type === 'default' || def.type === 'optional') return questionsIn(def.innerType, prefix);
  if (def.type !== 'object') return [prefix.slice(0, -1)];
  return Object.entries(def.shape as Record<string, unknown>).flatMap(([name, inner]) =>
    questionsIn(inner, `${prefix}${name}.`),
  );
}
