/** words: every sentence a person reads, by language; complete over the engine's codes by type. */

import { backupLabels } from './en/backup-labels';
import { letGoSentence, sourceSentence, unusualSentence, waitingSentence } from './en/facts';
import { labels } from './en/labels';
import { otherRefusals } from './en/other-refusals';
import { type EngineRefusal, refusals } from './en/refusals';
import { sheet } from './en/sheet';
import { shopLabels } from './en/shop-labels';
import { signingLabels } from './en/signing-labels';
import * as terms from './en/terms';
import { dateText, dayText, timeText } from './en/time';
import * as writing from './en/writing';
import { type Names, namesFrom, plainNames } from './names';

/** Any refusal: its code, and facts of its own. */
interface Refused {
  readonly code: string;
  readonly [fact: string]: unknown;
}

/** The sentence for a refusal: what is in the way, and what to do. */
function refusal(refused: Refused, names: Names = plainNames): string {
  if (Object.hasOwn(refusals, refused.code)) {
    const code = refused.code as EngineRefusal['code']; // the table has it
    return (refusals[code] as (facts: unknown, names: Names) => string)(refused, names);
  }
  const other = otherRefusals[refused.code];
  return other === undefined
    ? `This could not be done (${refused.code}). Everything saved before is safe.`
    : other({ ...refused });
}

export const words = {
  ...labels,
  ...signingLabels,
  ...shopLabels,
  ...backupLabels,
  sheet,
  terms,
  writing,
  refusal,
  waiting: waitingSentence,
  unusual: unusualSentence,
  source: sourceSentence,
  letGo: letGoSentence,
  date: dateText,
  day: dayText,
  time: timeText,
} as const;

export { peopleLabels } from './en/people-labels';
export { type Names, namesFrom, plainNames };
