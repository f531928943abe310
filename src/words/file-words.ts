/** Sentences of record files and of verifying: fetched with the places that say them, not before the first screen. */

import { recordFileLabels } from './en/record-file-labels';

export const fileWords = recordFileLabels;
