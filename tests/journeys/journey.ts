/** What the chapters of one journey hand on to each other. */

import type { Bike } from '../../src/engine/bike';
import type { Workshop } from './workshop';

export interface Journey {
  readonly shop: Workshop;
  readonly bike: Bike;
  /** Known once the box is received. */
  job: string;
}
