/** The description of a bike: what it is made of, as far as it changes the work. Lengths in mm, pressures in kPa, loads in kg. */

import * as z from 'zod/mini';
import {
  assists,
  axleHeads,
  axles,
  axleThreads,
  bars,
  batteries,
  bikeKinds,
  bottomBrackets,
  brakes,
  chainJoins,
  chainringFixings,
  crankFixings,
  discMounts,
  drives,
  extras,
  forks,
  frameShapes,
  frontHubs,
  gearings,
  grips,
  hangers,
  headsets,
  hoses,
  loads,
  materials,
  pedalStyles,
  pedalThreads,
  postShapes,
  preloadPlugs,
  rearHubs,
  rotorFixings,
  routings,
  saddleClamps,
  seatClamps,
  seatPosts,
  shifters,
  springs,
  stemAngles,
  stems,
  tensions,
  tyreFits,
} from './features';

const positive = z.number().check(z.positive());
const trimmed = z.string().check(z.trim(), z.minLength(1), z.maxLength(80));

// What was added to the description later is optional, so that a bike of any earlier day reads as it was written.
function wheelSchema<Hub extends string>(fittedInTheBox: boolean, hubs: readonly Hub[]) {
  return z.object({
    axle: z.enum(axles),
    /** As printed on the axle or its nut. */
    axleThread: z.optional(z.enum(axleThreads)),
    /** What turns a thru-axle. */
    axleHead: z.optional(z.enum(axleHeads)),
    hub: z.optional(z.enum(hubs)),
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
    /** Whether the hydraulic hose comes joined to lever and caliper. */
    hose: z.optional(z.enum(hoses)),
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
    /** The spring of the rear shock, where there is one. */
    shock: z.optional(z.enum(springs)),
    /** Where a cargo bike carries its load. */
    load: z.optional(z.enum(loads)),
  }),
  fork: z.object({
    kind: z.enum(forks),
    steerer: z._default(z.enum(materials), 'aluminium'),
    spring: z.optional(z.enum(springs)),
  }),
  front: wheelSchema(false, frontHubs),
  rear: wheelSchema(true, rearHubs),
  steering: z.object({
    stem: z.enum(stems),
    bar: z.enum(bars),
    barMaterial: z._default(z.enum(materials), 'aluminium'),
    faceplateBolts: z._default(z.union([z.literal(1), z.literal(2), z.literal(4)]), 4),
    /** Whether grips, levers and shifters are on the bar as it comes out of the box. */
    controlsFitted: z._default(z.boolean(), true),
    headset: z.optional(z.enum(headsets)),
    /** What the top cap pulls against. */
    plug: z.optional(z.enum(preloadPlugs)),
    stemAngle: z.optional(z.enum(stemAngles)),
    grip: z.optional(z.enum(grips)),
    /** Where cables and hoses run. */
    routing: z.optional(z.enum(routings)),
  }),
  seat: z.object({
    clamp: z.enum(seatClamps),
    post: z._default(z.enum(seatPosts), 'rigid'),
    postMaterial: z._default(z.enum(materials), 'aluminium'),
    postDiameter: positive,
    postShape: z.optional(z.enum(postShapes)),
    saddleClamp: z._default(z.enum(saddleClamps), 'one-bolt'),
  }),
  gears: z.object({
    kind: z.enum(gearings),
    drive: z._default(z.enum(drives), 'chain'),
    chainrings: z._default(z.int().check(z.minimum(0), z.maximum(3)), 1),
    /** Sprockets of a cassette, or speeds of a hub. */
    speeds: z._default(z.int().check(z.minimum(1), z.maximum(14)), 1),
    shifter: z.optional(z.enum(shifters)),
    /** How the rear derailleur hangs on the frame. */
    hanger: z.optional(z.enum(hangers)),
    /** What keeps chain or belt tight where no derailleur does. */
    tension: z.optional(z.enum(tensions)),
    /** How the chain is closed, and whether it comes so. */
    join: z.optional(z.enum(chainJoins)),
  }),
  cranks: z.object({
    fixing: z._default(z.enum(crankFixings), 'square-taper'),
    fitted: z._default(z.boolean(), true),
    bottomBracket: z.optional(z.enum(bottomBrackets)),
    chainring: z.optional(z.enum(chainringFixings)),
  }),
  pedals: z.object({
    thread: z._default(z.enum(pedalThreads), '9/16 in'),
    supplied: z._default(z.boolean(), true),
    style: z.optional(z.enum(pedalStyles)),
  }),
  battery: z.optional(z.enum(batteries)),
  extras: z._default(z.array(z.enum(extras)), []),
  /** Greatest total of rider, luggage and bike, kg, as the maker states it. */
  loadLimit: z.optional(positive),
});

export type Bike = z.infer<typeof bikeSchema>;
