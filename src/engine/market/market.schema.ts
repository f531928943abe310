/** What a market asks for at sale, as data: each row with its source and its date, and never legal advice. */

import * as z from 'zod/mini';

export const marketIds = ['gb', 'us', 'de', 'fr', 'nl', 'au', 'jp'] as const;
export const hands = ['left', 'right'] as const;
export const fittings = [
  'bell',
  'front-reflector',
  'rear-reflector',
  'side-reflectors',
  'pedal-reflectors',
  'front-lamp',
  'rear-lamp',
  'two-brakes',
  'marking',
  'instructions',
] as const;

const day = z.iso.date();
const source = z.string().check(z.minLength(1));

export const marketSchema = z.object({
  id: z.enum(marketIds),
  name: z.string().check(z.minLength(1)),
  /** The hand whose lever works the front brake. */
  frontBrakeLever: z.enum(hands),
  /** Whether a law says so; otherwise it is custom or a standard. */
  leverByLaw: z.boolean(),
  /** Whether a single customer may order it the other way round. */
  reversibleOnOrder: z._default(z.boolean(), false),
  leverSource: source,
  leverDate: day,
  fittings: z.array(z.object({ fitting: z.enum(fittings), source, date: day })),
  notLegalAdvice: z.literal(true),
});

export type MarketRules = z.infer<typeof marketSchema>;
export type MarketId = (typeof marketIds)[number];
export type Fitting = (typeof fittings)[number];
export type Hand = (typeof hands)[number];
