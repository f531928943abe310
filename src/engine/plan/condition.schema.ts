/** Conditions: questions about a bike, as data, that a mechanic can read. */

import * as z from 'zod/mini';

const answer = z.union([z.string(), z.number(), z.boolean()]);

/**
 * One question, or several joined:
 * `{ ask: 'front.brake', is: ['linear-pull', 'cantilever'] }`, `{ ask: 'extras', has: 'rack' }`,
 * `{ ask: 'frame.minimumInsertion', known: true }`, `{ all: […] }`, `{ any: […] }`, `{ not: … }`.
 */
export type Condition =
  | {
      readonly ask: string;
      readonly is: string | number | boolean | readonly (string | number | boolean)[];
    }
  | { readonly ask: string; readonly has: string }
  | { readonly ask: string; readonly known: boolean }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

const asked = [
  z.strictObject({ ask: z.string(), is: z.union([answer, z.array(answer)]) }),
  z.strictObject({ ask: z.string(), has: z.string() }),
  z.strictObject({ ask: z.string(), known: z.boolean() }),
] as const;

export const conditionSchema: z.ZodMiniType<Condition> = z.lazy(() =>
  z.union([
    ...asked,
    z.strictObject({ all: z.array(conditionSchema) }),
    z.strictObject({ any: z.array(conditionSchema) }),
    z.strictObject({ not: conditionSchema }),
  ]),
);

/** Conditions that come in from outside: joined so many times at most, so that no file can wind a reader up without end. */
function conditionWithin(depth: number): z.ZodMiniType<Condition> {
  if (depth === 0) return z.union(asked);
  const inner = conditionWithin(depth - 1);
  return z.union([
    ...asked,
    z.strictObject({ all: z.array(inner) }),
    z.strictObject({ any: z.array(inner) }),
    z.strictObject({ not: inner }),
  ]);
}

export const givenConditionSchema = conditionWithin(5);
