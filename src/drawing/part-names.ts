/** The names of what is drawn: the places of a bike, and a few parts between them that are no place of their own. */

import type { Place } from '../engine/bike';

export type PartName =
  | Place
  | 'head-tube'
  | 'stays'
  | 'cables'
  | 'battery'
  | 'stabilisers'
  | 'lock'
  | 'basket'
  | 'sprockets';
