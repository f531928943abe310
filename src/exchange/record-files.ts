/** Record files in one hand: written, opened, and joined to what is held. */

import type { BundleSource, ToldProgress } from './bundle-source';
import { mergeRecord } from './merge-record';
import { openBundle } from './open-bundle';
import { writeBundle } from './write-bundle';
import type { ByteSink } from './zip-writer';

/** `readme` is what the file says to somebody who has no app. */
export function createRecordFiles(readme: string) {
  return {
    write: (source: Omit<BundleSource, 'readme'>, sink: ByteSink, onProgress?: ToldProgress) =>
      writeBundle({ ...source, readme }, sink, onProgress),
    open: openBundle,
    merge: mergeRecord,
  };
}
