/** A stand that nobody has touched for its minutes asks again who is there; the screen, and what is typed on it, stay. */

import type { Storage } from '../storage/contract';
import type { SessionStore } from './session';

export interface StandLock {
  /** Somebody is here. Written down at most once a minute, so that a stand left alone is asked again even after a reload. */
  touch(now: number): void;
  /** Whether that was too long ago: then whoever was there has left. `now` in milliseconds since 1970. */
  look(now: number): void;
}

const minute = 60_000;
const touchedSetting = 'touched';

export async function createStandLock(
  settings: Storage['settings'],
  session: SessionStore,
): Promise<StandLock> {
  const kept = (await settings.get(touchedSetting).catch(() => undefined))?.value;
  let latest = typeof kept === 'number' ? kept : undefined;
  let written = latest ?? 0;
  return {
    touch(now) {
      latest = now;
      if (Math.abs(now - written) < minute) return;
      written = now;
      // A failure costs one more question after a reload.
      void settings.put({ id: touchedSetting, value: now }).catch(() => undefined);
    },
    look(now) {
      const { person, preferences, leave } = session.getState();
      // A clock that was set back is counted from now.
      if (latest === undefined || now < latest) latest = now;
      if (person === undefined || preferences.lockAfter === 0) return;
      if (now - latest >= preferences.lockAfter * minute) leave();
    },
  };
}
