/** The parts of a bike that work is grouped by, in the order a build usually visits them. */

export const zones = [
  'whole-bike',
  'frame',
  'fork-and-front-brake',
  'cockpit',
  'front-wheel',
  'rear-wheel',
  'drivetrain',
  'seat',
] as const;

export type Zone = (typeof zones)[number];
