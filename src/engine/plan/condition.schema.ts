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

export const conditionSchema: z.ZodMiniType<Condition> = z.lazy(() =>
  z.union([
    z.strictObject({ ask: z.string(), is: z.union([answer, z.array(answer)]) }),
    z.strictObject({ ask: z.string(), has: z.string() }),
    z.strictObject({ ask: z.string(), known: z.boolean() }),
    z.strictObject({ all: z.array(conditionSchema) }),
    z.strictObject({ any: z.array(conditionSchema) }),
    z.strictObject({ not: conditionSchema }),
  ]),
);
