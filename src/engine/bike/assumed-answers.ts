/** What a description leaves open and the work needs to know: the commonest answer, and no answer where the part is lacking. */

import type { Bike } from './bike.schema';

type Answer = string | number | boolean;

/** By dotted question. `undefined` says that this bike has no such part, whatever its description says of it. */
export type AssumedAnswers = Readonly<Record<string, Answer | undefined>>;

/**
 * The answers that stand beside a bike's own. An answer given in the description always goes before an assumed one.
 * Source of every assumption: common practice, no source; the mechanic corrects the description at the box.
 */
export function assumedAnswers(bike: Bike): AssumedAnswers {
  return {
    ...wheelAnswers(bike, 'front'),
    ...wheelAnswers(bike, 'rear'),
    ...hubAnswers(bike),
    ...springAnswers(bike),
    ...steeringAnswers(bike),
    ...driveAnswers(bike),
    'seat.postShape': bike.seat.postShape ?? 'round',
    'frame.load': bike.kind === 'cargo' ? (bike.frame.load ?? 'front-load') : bike.frame.load,
    battery: bike.assist === 'none' ? undefined : (bike.battery ?? 'removable'),
  };
}

function wheelAnswers(bike: Bike, wheel: 'front' | 'rear'): AssumedAnswers {
  const { axle, axleHead, brake, discMount, rotor, hose } = bike[wheel];
  const hasDisc = brake === 'hydraulic-disc' || brake === 'cable-disc';
  const usualMount = bike.kind === 'road' || bike.kind === 'gravel' ? 'flat' : 'post';
  return {
    [`${wheel}.axleHead`]: axle === 'thru-axle' ? (axleHead ?? 'hex') : undefined,
    [`${wheel}.discMount`]: hasDisc ? (discMount ?? usualMount) : undefined,
    [`${wheel}.rotor`]: hasDisc ? (rotor ?? 'six-bolt') : undefined,
    [`${wheel}.hose`]: brake === 'hydraulic-disc' ? (hose ?? 'fitted') : undefined,
  };
}

function hubAnswers({ assist, extras, front, rear }: Bike): AssumedAnswers {
  const drivesRear = assist === 'hub-motor' && front.hub !== 'motor';
  return {
    'front.hub': front.hub ?? (extras.includes('dynamo-lights') ? 'dynamo' : 'plain'),
    'rear.hub': rear.hub ?? (drivesRear ? 'motor' : 'plain'),
  };
}

const airSprung: readonly Bike['kind'][] = [
  'mountain-hardtail',
  'mountain-full-suspension',
  'gravel',
];

function springAnswers({ kind, fork, frame }: Bike): AssumedAnswers {
  const usualSpring = airSprung.includes(kind) ? 'air' : 'coil';
  return {
    'fork.spring': fork.kind === 'suspension' ? (fork.spring ?? usualSpring) : undefined,
    'frame.shock': frame.shock ?? (kind === 'mountain-full-suspension' ? 'air' : undefined),
  };
}

function steeringAnswers({ steering, fork }: Bike): AssumedAnswers {
  const { stem, bar, headset, plug, stemAngle, grip, routing } = steering;
  const usualHeadset = { quill: 'threaded', threadless: 'cups', integrated: 'drop-in' } as const;
  const holdsNoStarNut = fork.steerer === 'carbon' || fork.steerer === 'unknown';
  const usualPlug = holdsNoStarNut ? 'expander' : 'star-nut';
  return {
    'steering.headset': headset ?? usualHeadset[stem],
    'steering.faceplateBolts': stem === 'integrated' ? undefined : steering.faceplateBolts,
    'steering.plug': stem === 'quill' ? undefined : (plug ?? usualPlug),
    'steering.stemAngle': stemAngle ?? 'fixed',
    'steering.grip': grip ?? (bar === 'drop' ? 'tape' : 'slip-on'),
    'steering.routing': routing ?? 'outside',
  };
}

/** A balance bike has no drive, so it has nothing that belongs to one. */
function driveAnswers(bike: Bike): AssumedAnswers {
  const { gears, cranks, pedals, assist } = bike;
  const drive = bike.kind === 'balance' ? 'none' : gears.drive;
  if (drive === 'none') return { 'gears.drive': drive, ...withoutDrive };
  const isDerailleur = gears.kind === 'derailleur' || gears.kind === 'electronic-derailleur';
  const isOnePiece = cranks.fixing === 'one-piece';
  return {
    'gears.shifter':
      gears.kind === 'single-speed' ? undefined : (gears.shifter ?? usualShifter(bike)),
    'gears.hanger': isDerailleur ? (gears.hanger ?? 'bolted') : undefined,
    'gears.tension': isDerailleur ? undefined : (gears.tension ?? usualTension(bike)),
    'gears.join': drive === 'chain' ? (gears.join ?? 'joined') : undefined,
    'cranks.bottomBracket':
      assist === 'mid-motor'
        ? undefined
        : (cranks.bottomBracket ?? (isOnePiece ? 'one-piece' : 'english')),
    'cranks.chainring': cranks.chainring ?? (isOnePiece ? 'direct' : 'bolted'),
    'pedals.thread': pedals.supplied ? pedals.thread : undefined,
    'pedals.style': pedals.supplied ? (pedals.style ?? 'platform') : undefined,
  };
}

/** Rings of different size ask for a chain whose slack is taken up. */
function usualTension({ gears, rear }: Bike): NonNullable<Bike['gears']['tension']> {
  if (gears.chainrings > 1) return 'sprung-tensioner';
  return rear.axle === 'thru-axle' ? 'sliding-dropouts' : 'slotted-dropouts';
}

function usualShifter({ gears, steering }: Bike): NonNullable<Bike['gears']['shifter']> {
  if (steering.bar === 'drop') return 'in-brake-lever';
  return gears.kind === 'hub' ? 'twist' : 'trigger';
}

const withoutDrive: AssumedAnswers = {
  'gears.kind': undefined,
  'gears.chainrings': undefined,
  'gears.speeds': undefined,
  'gears.shifter': undefined,
  'gears.hanger': undefined,
  'gears.tension': undefined,
  'gears.join': undefined,
  'cranks.fixing': undefined,
  'cranks.fitted': undefined,
  'cranks.bottomBracket': undefined,
  'cranks.chainring': undefined,
  'pedals.thread': undefined,
  'pedals.supplied': undefined,
  'pedals.style': undefined,
};
