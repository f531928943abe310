/** What a delivery list may leave out, by kind of bike: the commonest, to be confirmed when the carton is open. */

import type { BikeKind } from '../engine/bike';

/** Cell texts by column name; what is not here takes the bike schema's own commonest value. */
export const deliveryDefaults: Readonly<Record<BikeKind, Readonly<Record<string, string>>>> = {
  road: { fork: 'rigid', bar: 'drop', seat_clamp: 'bolt' },
  gravel: { fork: 'rigid', bar: 'drop', seat_clamp: 'bolt' },
  'mountain-hardtail': { fork: 'suspension', bar: 'riser', seat_clamp: 'bolt' },
  'mountain-full-suspension': { fork: 'suspension', bar: 'riser', seat_clamp: 'bolt' },
  town: { fork: 'rigid', bar: 'swept', seat_clamp: 'bolt' },
  trekking: { fork: 'rigid', bar: 'flat', seat_clamp: 'bolt' },
  folding: { fork: 'rigid', bar: 'flat', seat_clamp: 'quick-lever' },
  cargo: { fork: 'rigid', bar: 'swept', seat_clamp: 'bolt' },
  bmx: { fork: 'rigid', bar: 'riser', seat_clamp: 'bolt' },
  balance: { fork: 'rigid', bar: 'riser', seat_clamp: 'bolt', drive: 'none', chainrings: '0' },
  child: { fork: 'rigid', bar: 'riser', seat_clamp: 'bolt' },
  tandem: { fork: 'rigid', bar: 'flat', seat_clamp: 'bolt' },
};
