/** Whether a condition asks a question that a bike answers, and for an answer that its description allows. */

import { bikeSchema, questions } from '../src/engine/bike';
import type { Condition } from '../src/engine/plan';

type Answer = string | number | boolean;

/** One line for each question that no bike answers and each answer that no bike gives. */
export function conditionFaults(condition: Condition | undefined): string[] {
  if (condition === undefined) return [];
  if ('all' in condition) return condition.all.flatMap(conditionFaults);
  if ('any' in condition) return condition.any.flatMap(conditionFaults);
  if ('not' in condition) return conditionFaults(condition.not);
  if (!questions.includes(condition.ask)) return [`no bike answers the question ${condition.ask}`];
  if ('known' in condition) return [];
  const isList = isListQuestion(condition.ask);
  if ('has' in condition !== isList) {
    return [`${condition.ask} is asked with "${isList ? 'has' : 'is'}", not the other way`];
  }
  return answersAsked(condition)
    .filter((answer) => !isAnswer(condition.ask, answer))
    .map((answer) => `no bike answers ${condition.ask} with ${JSON.stringify(answer)}`);
}

function answersAsked(condition: { has: string } | { is: Answer | readonly Answer[] }) {
  if ('has' in condition) return [condition.has];
  return [condition.is].flat() as readonly Answer[]; // a list of one, or the list
}

type SchemaLike = {
  readonly def: { readonly type: string } & Record<string, unknown>;
  readonly safeParse: (value: unknown) => { readonly success: boolean };
};

function isListQuestion(question: string): boolean {
  return schemaOf(question).def.type === 'array';
}

function isAnswer(question: string, answer: Answer): boolean {
  const schema = schemaOf(question);
  return schema.safeParse(schema.def.type === 'array' ? [answer] : answer).success;
}

/** The schema of the place in the description that answers the question. */
function schemaOf(question: string): SchemaLike {
  return question.split('.').reduce(
    (schema: SchemaLike, name) => {
      const shape = unwrapped(schema).def.shape as Record<string, SchemaLike>; // the question is known, so this is an object
      return unwrapped(shape[name] as SchemaLike);
    },
    bikeSchema as unknown as SchemaLike,
  ); // zod's own description of a schema
}

function unwrapped(schema: SchemaLike): SchemaLike {
  const { def } = schema;
  const isWrapper = def.type === 'default' || def.type === 'optional';
  return isWrapper ? unwrapped(def.innerType as SchemaLike) : schema;
}
