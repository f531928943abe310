/** The shape of a log entry, checked where entries come in from outside. */

import * as z from 'zod/mini';

const name = z.string().check(z.minLength(1));
const count = z.int().check(z.minimum(1));
const digest = z.string().check(z.regex(/^[0-9a-f]{64}$/, 'a lower-case hex SHA-256'));

/** Members that a later version adds are kept, because the digest covers them. */
export const entrySchema = z.looseObject({
  id: digest,
  v: count,
  job: name,
  device: name,
  seq: count,
  lamport: count,
  parents: z.readonly(z.array(digest)),
  at: z.looseObject({ claimed: z.iso.datetime({ offset: true }), zone: name }),
  by: name,
  event: z.looseObject({ kind: name, v: count }),
});
