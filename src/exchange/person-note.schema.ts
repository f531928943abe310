/** What was noted of a person of the shop, as files carry it: joining, leaving, new PINs and wrong ones. */

import * as z from 'zod/mini';

const text = z.string().check(z.maxLength(10_000));
const by = { by: text, at: z.object({ claimed: text, zone: text }) };

export const personNoteSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('joined'), ...by }),
  z.object({ kind: z.literal('left'), ...by }),
  z.object({ kind: z.literal('new-pin'), ...by, reason: text }),
  z.object({ kind: z.literal('pin-here'), ...by }),
  z.object({ kind: z.literal('wrong-pin'), ...by }),
]);
