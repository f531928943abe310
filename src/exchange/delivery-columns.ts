/** The columns of a delivery list: one bike a row, each column by name, in any order. */

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
} from '../engine/bike';

/** How the text of a cell is read; `choices` are separated by semicolons, a `date` is written 2026-11-28. */
export const cellReadings = ['text', 'number', 'choice', 'choices', 'yes-no', 'date'] as const;

export interface DeliveryColumn {
  readonly name: string;
  /** Whether every row must fill it. */
  readonly required: boolean;
  readonly reads: (typeof cellReadings)[number];
  readonly allowed?: readonly string[];
  /** The places in the bike's description that it fills; none for what belongs to the delivery or the promise. */
  readonly fills: readonly string[];
  /** The column whose cell is taken when this one is left empty. */
  readonly likeColumn?: string;
  readonly means: string;
}

export const deliveryColumns: readonly DeliveryColumn[] = [
  about('delivery', 'The delivery note it came with.'),
  { ...about('due', 'The day it is promised for.'), reads: 'date' },
  text('make', 'make', 'The name on the frame.', true),
  text('model', 'model', 'The model, as the maker names it.', true),
  choice('kind', 'kind', bikeKinds, 'What kind of bike it is.', true),
  text('frame_number', 'frameNumber', 'As stamped in the frame or printed on the carton.', true),
  text('gtin', 'gtin', 'The article number under the bar code: 8, 12, 13 or 14 digits.'),
  text('colour', 'colour', 'The colour, in words.'),
  text('size', 'size', 'The frame size, as the maker gives it.'),
  choice('assist', 'assist', assists, 'The motor, where there is one.'),
  choice('battery', 'battery', batteries, 'Whether the motor’s battery comes off the bike.'),
  choice('frame_material', 'frame.material', materials, 'What the frame is made of.'),
  choice('frame_shape', 'frame.shape', frameShapes, 'Diamond, or low to step through.'),
  number('post_insertion_mm', 'frame.minimumInsertion', 'The least seat post in the frame, in mm.'),
  choice('shock', 'frame.shock', springs, 'The spring of the rear shock, where there is one.'),
  choice('load', 'frame.load', loads, 'Where a cargo bike carries its load.'),
  choice('fork', 'fork.kind', forks, 'Whether the fork springs.'),
  choice('fork_spring', 'fork.spring', springs, 'What springs the fork.'),
  choice('steerer_material', 'fork.steerer', materials, 'What the steerer is made of.'),
  choice('front_axle', 'front.axle', axles, 'How the front wheel is held.', true),
  choice('rear_axle', 'rear.axle', axles, 'How the rear wheel is held.', true),
  choice('front_axle_thread', 'front.axleThread', axleThreads, 'As printed on axle or nut.'),
  choice('rear_axle_thread', 'rear.axleThread', axleThreads, 'The same for the rear.'),
  both(choice('axle_head', 'axleHead', axleHeads, 'What turns the thru-axles.')),
  choice('front_hub', 'front.hub', frontHubs, 'What the front hub does besides turning.'),
  choice('rear_hub', 'rear.hub', rearHubs, 'What the rear hub does besides turning.'),
  choice('front_brake', 'front.brake', brakes, 'The brake on the front wheel.', true),
  choice('rear_brake', 'rear.brake', brakes, 'The brake on the rear wheel.', true),
  both(choice('disc_mount', 'discMount', discMounts, 'How the disc calipers are mounted.')),
  both(choice('rotor', 'rotor', rotorFixings, 'How the rotors are held to the hubs.')),
  choice('front_hose', 'front.hose', hoses, 'Whether the hydraulic hose comes joined.'),
  choice('rear_hose', 'rear.hose', hoses, 'The same for the rear.'),
  text('front_tyre', 'front.tyre', 'The size as printed on the side wall.', true),
  {
    ...text('rear_tyre', 'rear.tyre', 'The same for the rear; empty when like the front.'),
    likeColumn: 'front_tyre',
  },
  text(
    'front_pressure',
    'front.tyrePressure',
    'The pressure printed on the side wall; empty when read at the stand.',
  ),
  text(
    'rear_pressure',
    'rear.tyrePressure',
    'The same for the rear; empty when read at the stand.',
  ),
  both(choice('tyre_fit', 'tyreFit', tyreFits, 'Tubes, or none.')),
  both(number('rim_max_kpa', 'rimMaxKpa', 'The greatest pressure the rims bear, in kPa.')),
  both(number('rim_inner_width_mm', 'rimInnerWidth', 'The rims’ width between the beads, in mm.')),
  both(yesNo('hookless', 'hookless', 'Whether the rims have no hooks for the beads.')),
  yesNo('front_wheel_fitted', 'front.fitted', 'Whether the front wheel comes in the fork.'),
  yesNo('rear_wheel_fitted', 'rear.fitted', 'Whether the rear wheel comes in the frame.'),
  choice('stem', 'steering.stem', stems, 'How the stem holds in or on the steerer.', true),
  choice('bar', 'steering.bar', bars, 'The shape of the handlebar.'),
  choice('bar_material', 'steering.barMaterial', materials, 'What the handlebar is made of.'),
  {
    ...number('faceplate_bolts', 'steering.faceplateBolts', 'How many bolts clamp the bar.'),
    allowed: ['1', '2', '4'],
  },
  yesNo('controls_fitted', 'steering.controlsFitted', 'Whether grips and levers come on the bar.'),
  choice('headset', 'steering.headset', headsets, 'How the headset is made.'),
  choice('preload_plug', 'steering.plug', preloadPlugs, 'What the top cap pulls against.'),
  choice('stem_angle', 'steering.stemAngle', stemAngles, 'Whether the stem can be tilted.'),
  choice('grip', 'steering.grip', grips, 'What the hands hold.'),
  choice('routing', 'steering.routing', routings, 'Where cables and hoses run.'),
  choice('seat_clamp', 'seat.clamp', seatClamps, 'How the seat post is clamped.'),
  choice('seat_post', 'seat.post', seatPosts, 'The kind of seat post.'),
  choice('post_material', 'seat.postMaterial', materials, 'What the seat post is made of.'),
  number('post_diameter_mm', 'seat.postDiameter', 'The seat post’s diameter, in mm.', true),
  choice('post_shape', 'seat.postShape', postShapes, 'Whether the seat post is round.'),
  choice('saddle_clamp', 'seat.saddleClamp', saddleClamps, 'How many bolts hold the saddle rails.'),
  choice('gears', 'gears.kind', gearings, 'What changes the gears.', true),
  choice('drive', 'gears.drive', drives, 'Chain, belt or none.'),
  number('chainrings', 'gears.chainrings', 'How many chainrings.'),
  number('speeds', 'gears.speeds', 'Sprockets of the cassette, or speeds of the hub.', true),
  choice('shifter', 'gears.shifter', shifters, 'What the hand shifts with.'),
  choice('hanger', 'gears.hanger', hangers, 'How the rear derailleur hangs on the frame.'),
  choice(
    'tension',
    'gears.tension',
    tensions,
    'What keeps chain or belt tight without a derailleur.',
  ),
  choice(
    'chain_join',
    'gears.join',
    chainJoins,
    'How the chain is closed, or whether it comes so.',
  ),
  choice('cranks', 'cranks.fixing', crankFixings, 'How the cranks are held to the axle.'),
  yesNo('cranks_fitted', 'cranks.fitted', 'Whether the cranks come on their axle.'),
  choice('bottom_bracket', 'cranks.bottomBracket', bottomBrackets, 'How it sits in the frame.'),
  choice('chainring', 'cranks.chainring', chainringFixings, 'How the chainring is held.'),
  choice('pedal_thread', 'pedals.thread', pedalThreads, 'The thread of the pedals.'),
  yesNo('pedals_supplied', 'pedals.supplied', 'Whether pedals are in the carton.'),
  choice('pedal_style', 'pedals.style', pedalStyles, 'The kind of pedals.'),
  {
    ...choice(
      'extras',
      'extras',
      extras,
      'What else is fitted or in the carton, one after another.',
    ),
    reads: 'choices',
  },
  number(
    'load_limit_kg',
    'loadLimit',
    'Rider, luggage and bike together, in kg, as the maker states.',
  ),
];

function about(name: string, means: string): DeliveryColumn {
  return { name, required: false, reads: 'text', fills: [], means };
}

function text(name: string, place: string, means: string, required = false): DeliveryColumn {
  return { name, required, reads: 'text', fills: [place], means };
}

function number(name: string, place: string, means: string, required = false): DeliveryColumn {
  return { name, required, reads: 'number', fills: [place], means };
}

function yesNo(name: string, place: string, means: string): DeliveryColumn {
  return { name, required: false, reads: 'yes-no', allowed: ['yes', 'no'], fills: [place], means };
}

function choice(
  name: string,
  place: string,
  allowed: readonly string[],
  means: string,
  required = false,
): DeliveryColumn {
  return { name, required, reads: 'choice', allowed, fills: [place], means };
}

/** The same for both wheels. */
function both(column: DeliveryColumn): DeliveryColumn {
  return { ...column, fills: column.fills.flatMap((place) => [`front.${place}`, `rear.${place}`]) };
}
