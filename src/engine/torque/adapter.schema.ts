/** A crowfoot or other adapter that moves the fastener off the wrench's drive axis. */

import * as z from 'zod/mini';
import { millimetresSchema } from './quantity.schema';

export const adapterSchema = z.object({
  /** Drive centre to the middle of the grip, mm. */
  grip: millimetresSchema,
  /** Drive centre to fastener centre, mm. */
  offset: millimetresSchema,
  /** Degrees between the wrench's own line and the adapter: 0 in line outward, 180 pointing back at the grip. */
  angle: z.number().check(z.gte(-180), z.lte(360)),
});

export type Adapter = z.infer<typeof adapterSchema>;
