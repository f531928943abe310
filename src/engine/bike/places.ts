/** Named places on a bike, in the order in which the walk from front to rear meets them (the shape of an M). */

export const places = [
  // up from the front wheel
  'front-tyre',
  'front-rim',
  'front-hub',
  'front-brake',
  'front-mudguard',
  'front-light',
  'fork',
  'headset',
  'stem',
  'bar',
  'left-lever',
  'right-lever',
  'grips',
  'bell',
  // down along the frame
  'top-tube',
  'down-tube',
  'bottle-cage',
  'bottom-bracket',
  'cranks',
  'left-pedal',
  'right-pedal',
  'chainrings',
  'front-derailleur',
  'chain',
  'chainguard',
  'stand',
  // up to the saddle
  'seat-tube',
  'seat-clamp',
  'seat-post',
  'saddle',
  // down to the rear wheel
  'rack',
  'rear-light',
  'reflectors',
  'rear-mudguard',
  'rear-brake',
  'rear-derailleur',
  'rear-hub',
  'rear-rim',
  'rear-tyre',
  // and once more as a whole
  'whole-bike',
] as const;

export type Place = (typeof places)[number];
