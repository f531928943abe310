/** How the fasteners of a joint lie. Bolts are numbered from 1, round the joint or along the line. */

import * as z from 'zod/mini';

/** A pair clamps the same thing side by side; opposed ones, such as bearing cups, close on it from either end. */
export const layoutShapes = ['line', 'pair', 'rectangle', 'ring', 'opposed'] as const;

export const layoutSchema = z.object({
  shape: z.enum(layoutShapes),
  bolts: z.number().check(z.int(), z.positive()),
});

export type LayoutShape = (typeof layoutShapes)[number];
export type Layout = z.infer<typeof layoutSchema>;
