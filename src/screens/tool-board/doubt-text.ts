/** Why a wrench is in doubt, in one sentence. */

import type { Doubt } from '../../state';
import { boardWords } from '../../words/board-words';

export function causeText({ wrench, cause, on, key }: Doubt): string {
  const isNoted = key !== 'condition' || cause === 'found-outside';
  return isNoted
    ? boardWords.reachBack.cause(wrench, cause, on)
    : boardWords.reachBack.causeUnknownDay(wrench, cause);
}
