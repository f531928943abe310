/** What a bike can be made of, as far as it changes the work: for each question the answers that the trade knows. */

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
export const springs = ['air', 'coil'] as const;
export const loads = ['front-load', 'long-tail'] as const;
/** As printed on the axle or its nut; the first four are thru-axles. */
export const axleThreads = [
  'M12×1',
  'M12×1.5',
  'M12×1.75',
  'M15×1.5',
  'M9×1',
  'M10×1',
  '5/16 in × 26',
  '3/8 in × 26',
  'M12×1.25',
  'M14×1',
] as const;
export const axleHeads = ['hex', 'lever'] as const;
export const frontHubs = ['plain', 'dynamo', 'motor'] as const;
export const rearHubs = ['plain', 'motor'] as const;
export const discMounts = ['post', 'flat'] as const;
export const rotorFixings = ['six-bolt', 'centre-lock'] as const;
export const hoses = ['fitted', 'to-fit'] as const;
export const stems = ['threadless', 'quill', 'integrated'] as const;
export const bars = ['flat', 'riser', 'drop', 'swept'] as const;
export const headsets = ['threaded', 'cups', 'drop-in'] as const;
export const preloadPlugs = ['star-nut', 'expander'] as const;
export const stemAngles = ['fixed', 'adjustable'] as const;
export const grips = ['slip-on', 'lock-on', 'tape'] as const;
export const routings = ['outside', 'through-frame', 'through-headset'] as const;
export const gearings = ['derailleur', 'electronic-derailleur', 'hub', 'single-speed'] as const;
export const drives = ['chain', 'belt', 'none'] as const;
export const shifters = ['trigger', 'twist', 'in-brake-lever'] as const;
export const hangers = ['bolted', 'part-of-frame', 'on-axle'] as const;
export const tensions = [
  'slotted-dropouts',
  'tugs',
  'sliding-dropouts',
  'eccentric',
  'sprung-tensioner',
] as const;
export const chainJoins = ['joined', 'quick-link', 'pin'] as const;
export const bottomBrackets = ['english', 'italian', 'press-fit', 'one-piece'] as const;
export const chainringFixings = ['bolted', 'direct', 'riveted'] as const;
export const crankFixings = ['square-taper', 'splined', 'pinch-bolts', 'one-piece'] as const;
export const seatClamps = ['bolt', 'quick-lever', 'wedge'] as const;
export const seatPosts = ['rigid', 'suspension', 'dropper-cable', 'dropper-hydraulic'] as const;
export const postShapes = ['round', 'not-round'] as const;
export const saddleClamps = ['one-bolt', 'two-bolt', 'clip'] as const;
export const pedalThreads = ['9/16 in', '1/2 in'] as const;
export const pedalStyles = ['platform', 'clip-in', 'folding'] as const;
export const batteries = ['removable', 'built-in'] as const;
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
  'front-rack',
  'motor-lights',
  'bar-ends',
  'pegs',
  'cable-detangler',
] as const;

export type BikeKind = (typeof bikeKinds)[number];
export type Extra = (typeof extras)[number];
export type Axle = (typeof axles)[number];
export type Brake = (typeof brakes)[number];
