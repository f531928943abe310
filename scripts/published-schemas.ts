/** The JSON Schemas that stand in docs/schemas, each by its file name; what comes in is described, not what the app makes of it. */

import * as z from 'zod/mini';
import { catalogueSchema } from '../src/engine/plan';
import { catalogueFileSchema } from '../src/exchange/catalogue-file.schema';

export function publishedSchemas(): Readonly<Record<string, unknown>> {
  return {
    'catalogue-changes.schema.json': titled(
      catalogueFileSchema,
      'A shop’s changes to the catalogue: versions, each with author, date and reason',
    ),
    'catalogue.schema.json': titled(
      catalogueSchema,
      'The catalogue: steps, joints and box contents, with the conditions under which each applies',
    ),
  };
}

function titled(schema: z.ZodMiniType, title: string): unknown {
  return {
    title,
    ...z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input', reused: 'ref' }),
  };
}
