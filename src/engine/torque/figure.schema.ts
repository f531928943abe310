/** A torque figure with its source: where a figure comes from is part of the figure. */

import * as z from 'zod/mini';
import { nameSchema, newtonMetresSchema } from './quantity.schema';

/** In order of trust, the most trusted first. */
export const figureSourceKinds = ['part', 'document', 'approved', 'usual'] as const;

export const figureSourceSchema = z.discriminatedUnion('kind', [
  /** Marked on the part itself; `printed` is the marking as it stands there. */
  z.object({ kind: z.literal('part'), printed: nameSchema }),
  /** The maker's document; `reference` says which, and where in it. */
  z.object({ kind: z.literal('document'), reference: nameSchema }),
  /** A value this shop has approved: who, and on which date. */
  z.object({ kind: z.literal('approved'), by: nameSchema, on: z.iso.date() }),
  /** The usual range for such a joint: no specification, and usable only once a named person accepts it. */
  z.object({ kind: z.literal('usual'), acceptedBy: z.exactOptional(nameSchema) }),
]);

/** Limits in N·m. */
export const figureSchema = z.object({
  min: z.exactOptional(newtonMetresSchema),
  max: z.exactOptional(newtonMetresSchema),
  target: z.exactOptional(newtonMetresSchema),
  source: figureSourceSchema,
});

export type FigureSourceKind = (typeof figureSourceKinds)[number];
export type FigureSource = z.infer<typeof figureSourceSchema>;
export type Figure = z.infer<typeof figureSchema>;
