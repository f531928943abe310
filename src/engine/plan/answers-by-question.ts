/** Every question about a bike with the answers it allows, so that a condition can be picked and a misspelt one found. */

import { bikeSchema } from '../bike';
import type { Condition } from './condition.schema';

type SchemaLike = { readonly def: { readonly type: string } & Record<string, unknown> };
type Answer = string | number | boolean;

/** By question; no list where any number or text may answer. Read from the description's own schema. */
export const answersByQuestion: ReadonlyMap<string, readonly Answer[]> = new Map(
  answersIn(bikeSchema, ''),
);

function answersIn(schema: unknown, question: string): readonly (readonly [string, Answer[]])[] {
  const { def } = schema as SchemaLike; // zod's own description of a schema
  if (def.type === 'default' || def.type === 'optional') return answersIn(def.innerType, question);
  if (def.type === 'array') return answersIn(def.element, question);
  if (def.type === 'enum')
    return [[question, Object.values(def.entries as Record<string, string>)]];
  if (def.type === 'boolean') return [[question, [true, false]]];
  if (def.type !== 'object') return [[question, []]];
  return Object.entries(def.shape as Record<string, unknown>).flatMap(([name, inner]) =>
    answersIn(inner, question === '' ? name : `${question}.${name}`),
  );
}

/** The first part of the condition that asks what no description answers, or accepts what it never says. */
export function unaskable(
  condition: Condition | undefined,
): { readonly question: string; readonly answer?: Answer } | undefined {
  if (condition === undefined) return undefined;
  if ('all' in condition) return firstOf(condition.all);
  if ('any' in condition) return firstOf(condition.any);
  if ('not' in condition) return unaskable(condition.not);
  const question = condition.ask;
  const answers = answersByQuestion.get(question);
  if (answers === undefined) return { question };
  if (answers.length === 0 || 'known' in condition) return undefined;
  const accepted = 'has' in condition ? [condition.has] : [condition.is].flat();
  const wrong = accepted.find((answer) => !answers.some((one) => one === answer));
  return wrong === undefined ? undefined : { question, answer: wrong };
}

function firstOf(parts: readonly Condition[]): ReturnType<typeof unaskable> {
  for (const part of parts) {
    const found = unaskable(part);
    if (found !== undefined) return found;
  }
  return undefined;
}
