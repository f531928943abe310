/** A tool of the board with everything that was noted of it, as files carry it. */

import * as z from 'zod/mini';
import { adapterSchema, wrenchSchema } from '../engine/torque';
import { toolNoteSchema } from './tool-note.schema';

const id = z.string().check(z.minLength(1));
const history = z.exactOptional(z.array(toolNoteSchema));

export const keptToolSchema = z.discriminatedUnion('kind', [
  z.object({
    id,
    kind: z.literal('wrench'),
    wrench: wrenchSchema,
    countedBefore: z.exactOptional(z.int().check(z.nonnegative())),
    history,
  }),
  z.object({
    id,
    kind: z.literal('adapter'),
    name: z.string(),
    adapter: adapterSchema,
    wrench: z.exactOptional(z.string()),
    retired: z.exactOptional(z.boolean()),
    history,
  }),
]);
