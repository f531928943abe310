/** Why a wrench is in doubt, in one sentence. */

import type { Doubt } from '../../state';
import { words } from '../../words';

export function causeText({ wrench, cause, on, key }: Doubt): string {
  const isNoted = key !== 'condition' || cause === 'found-outside';
  return isNoted
    ? words.reachBack.cause(wrench, cause, on)
    : words.reachBack.causeUnknownDay(wrench, cause);
}
