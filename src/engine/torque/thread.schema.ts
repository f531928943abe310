/** A metric thread: major diameter and pitch, mm. */

import * as z from 'zod/mini';
import { millimetres } from '../units';

const length = z.pipe(z.number().check(z.positive()), z.transform(millimetres));

export const threadSchema = z.object({ diameter: length, pitch: length });

export type Thread = z.infer<typeof threadSchema>;
