/** What a delivery list may leave out, by kind of bike: the commonest, to be confirmed when the carton is open. */

import type { BikeKind } from '../engine/bike';

/** Figures and compounds hang on a material, so the commonest is no answer: where nothing is said, it is not known. */
const unsaid = {
  frame_material: 'unknown',
  steerer_material: 'unknown',
  bar_material: 'unknown',
  post_material: 'unknown',
} as const;

/** Cell texts by column name; what is not here takes the bike schema's own commonest value. */
export const deliveryDefaults: Readonly<Record<BikeKind, Readonly<Record<string, string>>>> = {
  road: { ...unsaid, fork: 'rigid', bar: 'drop', seat_clamp: 'bolt' },
  gravel: { ...unsaid, fork: 'rigid', bar: 'drop', seat_clamp: 'bolt' },
  'mountain-hardtail': { ...unsaid, fork: 'suspension', bar: 'riser', seat_clamp: 'bolt' },
  'mountain-full-suspension': { ...unsaid, fork: 'suspension', bar: 'riser', seat_clamp: 'bolt' },
  town: { ...unsaid, fork: 'rigid', bar: 'swept', seat_clamp: 'bolt' },
  trekking: { ...unsaid, fork: 'rigid', bar: 'flat', seat_clamp: 'bolt' },
  folding: { ...unsaid, fork: 'rigid', bar: 'flat', seat_clamp: 'quick-lever' },
  cargo: { ...unsaid, fork: 'rigid', bar: 'swept', seat_clamp: 'bolt' },
  bmx: { ...unsaid, fork: 'rigid', bar: 'riser', seat_clamp: 'bolt' },
  balance: {
    ...unsaid,
    fork: 'rigid',
    bar: 'riser',
    seat_clamp: 'bolt',
    drive: 'none',
    chainrings: '0',
  },
  child: { ...unsaid, fork: 'rigid', bar: 'riser', seat_clamp: 'bolt' },
  tandem: { ...unsaid, fork: 'rigid', bar: 'flat', seat_clamp: 'bolt' },
};
