/** Sentences of record files and of verifying: fetched with the places that say them, not before the first screen. */

import { fileRefusals } from './en/file-refusals';
import { recordFileLabels } from './en/record-file-labels';
import { words } from './index';

/** As `words.refusal`, and what can be wrong with a file as well. */
function refusal(refused: Parameters<typeof words.refusal>[0]): string {
  const sentence = Object.hasOwn(fileRefusals, refused.code)
    ? fileRefusals[refused.code]
    : undefined;
  return sentence === undefined ? words.refusal(refused) : sentence(refused);
}

export const fileWords = { ...recordFileLabels, refusal } as const;
