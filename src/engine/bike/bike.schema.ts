/** The description of a bike: what it is made of, as far as it changes the work. Lengths in mm, pressures in kPa, loads in kg. */

import * as z from 'zod/mini';

export const bikeKinds = [
  'road',
  'gravel',
  'mountain-hardtail',
  'mountain-full-suspension',
  'town',
  'trekking',
  'folding',
  'cargo',
  'bmx',
  'balance',
  'child',
  'tandem',
] as const;

export const assists = ['none', 'mid-motor', 'hub-motor'] as const;
export const materials = ['aluminium', 'steel', 'carbon', 'titanium', 'unknown'] as const;
export const frameShapes = ['diamond', 'low-step'] as const;
export const forks = ['rigid', 'suspension'] as const;
export const axles = ['quick-release', 'thru-axle', 'nutted'] as const;
export const brakes = [
  'hydraulic-disc',
  'cable-disc',
  'linear-pull',
  'cantilever',
  'dual-pivot',
  'coaster',
  'roller',
  'drum',
  'none',
] as const;
export const discMounts = ['post', 'flat'] as const;
export const rotorFixings = ['six-bolt', 'centre-lock'] as const;
export const stems = ['threadless', 'quill', 'integrated'] as const;
export const bars = ['flat', 'riser', 'drop', 'swept'] as const;
export const gearings = ['derailleur', 'electronic-derailleur', 'hub', 'single-speed'] as const;
export const drives = ['chain', 'belt', 'none'] as const;
export const crankFixings = ['square-taper', 'splined', 'pinch-bolts', 'one-piece'] as const;
export const seatClamps = ['bolt', 'quick-lever'] as const;
export const seatPosts = ['rigid', 'suspension', 'dropper-cable', 'dropper-hydraulic'] as const;
export const saddleClamps = ['one-bolt', 'two-bolt'] as const;
export const pedalThreads = ['9/16 in', '1/2 in'] as const;
export const tyreFits = ['tube', 'tubeless'] as const;
export const extras = [
  'mudguards',
  'rack',
  'stand',
  'bell',
  'reflectors',
  'dynamo-lights',
  'battery-lights',
  'chainguard',
  'basket',
  'stabilisers',
  'child-seat-mount',
  'lock',
  'bottle-cage',
  'spoke-guard',
] as const;

const positive = z.number().check(z.positive());
const trimmed = z.string().check(z.trim(), z.minLength(1), z.maxLength(80));

function wheelSchema(fittedInTheBox: boolean) {
  return z.object({
    axle: z.enum(axles),
    brake: z.enum(brakes),
    /** As printed on the side wall, for example `57-622` or `28 x 1.50`. */
    tyre: trimmed,
    /** As printed on the side wall, for example `40-65 psi` or `max 4.5 bar`; absent when it is read at the stand. */
    tyrePressure: z.optional(trimmed),
    tyreFit: z._default(z.enum(tyreFits), 'tube'),
    rimMaxKpa: z.optional(positive),
    rimInnerWidth: z.optional(positive),
    hookless: z._default(z.boolean(), false),
    discMount: z.optional(z.enum(discMounts)),
    rotor: z.optional(z.enum(rotorFixings)),
    /** Whether the wheel is already in the frame as it comes out of the box. */
    fitted: z._default(z.boolean(), fittedInTheBox),
  });
}

export const bikeSchema = z.object({
  make: trimmed,
  model: trimmed,
  kind: z.enum(bikeKinds),
  assist: z._default(z.enum(assists), 'none'),
  frameNumber: z
    .string()
    .check(z.trim(), z.toUpperCase(), z.regex(/^[A-Z0-9][A-Z0-9\-/. ]{2,29}$/)),
  gtin: z.optional(z.string().check(z.regex(/^\d{8}(\d{4,6})?$/))),
  colour: z.optional(trimmed),
  size: z.optional(trimmed),
  frame: z.object({
    material: z._default(z.enum(materials), 'aluminium'),
    shape: z._default(z.enum(frameShapes), 'diamond'),
    /** The frame maker's own minimum insertion of the seat post, mm. */
    minimumInsertion: z.optional(positive),
  }),
  fork: z.object({
    kind: z.enum(forks),
    steerer: z._default(z.enum(materials), 'aluminium'),
  }),
  front: wheelSchema(false),
  rear: wheelSchema(true),
  steering: z.object({
    stem: z.enum(stems),
    bar: z.enum(bars),
    barMaterial: z._default(z.enum(materials), 'aluminium'),
    faceplateBolts: z._default(z.union([z.literal(1), z.literal(2), z.literal(4)]), 4),
    /** Whether grips, levers and shifters are on the bar as it comes out of the box. */
    controlsFitted: z._default(z.boolean(), true),
  }),
  seat: z.object({
    clamp: z.enum(seatClamps),
    post: z._default(z.enum(seatPosts), 'rigid'),
    postMaterial: z._default(z.enum(materials), 'aluminium'),
    postDiameter: positive,
    saddleClamp: z._default(z.enum(saddleClamps), 'one-bolt'),
  }),
  gears: z.object({
    kind: z.enum(gearings),
    drive: z._default(z.enum(drives), 'chain'),
    chainrings: z._default(z.int().check(z.minimum(0), z.maximum(3)), 1),
    /** Sprockets of a cassette, or speeds of a hub. */
    speeds: z._default(z.int().check(z.minimum(1), z.maximum(14)), 1),
  }),
  cranks: z.object({
    fixing: z._default(z.enum(crankFixings), 'square-taper'),
    fitted: z._default(z.boolean(), true),
  }),
  pedals: z.object({
    thread: z._default(z.enum(pedalThreads), '9/16 in'),
    supplied: z._default(z.boolean(), true),
  }),
  extras: z._default(z.array(z.enum(extras)), []),
  /** Greatest total of rider, luggage and bike, kg, as the maker states it. */
  loadLimit: z.optional(positive),
});

export type Bike = z.infer<typeof bikeSchema>;
export type BikeKind = (typeof bikeKinds)[number];
export type Extra = (typeof extras)[number];
export type Axle = (typeof axles)[number];
export type Brake = (typeof brakes)[number];
