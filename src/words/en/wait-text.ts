/** A wait in words, as somebody at the stand would say it. */

import { plural } from './writing';

/** Whole seconds under a minute; whole minutes, rounded up, from there on. */
export function waitText(seconds: unknown): string {
  if (typeof seconds !== 'number' || seconds <= 0) return 'a moment';
  return seconds < 60
    ? plural(Math.ceil(seconds), 'second')
    : plural(Math.ceil(seconds / 60), 'minute');
}
