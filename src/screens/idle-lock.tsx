/** A stand that nobody has touched for a while asks again who is there; whatever is on the screen stays. */

import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useApp } from './app-context';

/** Milliseconds. */
const looksEvery = 5000;
const taps = ['pointerdown', 'keydown'] as const;

export function IdleLock() {
  const app = useApp();
  const loaded = useStore(app.session, (session) => session.loaded);
  useEffect(() => {
    if (!loaded) return;
    let stop = () => {};
    let isLeft = false;
    void app.standLock().then((lock) => {
      if (isLeft) return;
      const now = () => Date.parse(app.clock.now().claimed);
      const look = () => lock.look(now());
      // A tap on a stand that has been alone too long comes too late: looked at first.
      const touch = () => {
        look();
        lock.touch(now());
      };
      look();
      const timer = setInterval(look, looksEvery);
      for (const tap of taps) document.addEventListener(tap, touch, { capture: true });
      stop = () => {
        clearInterval(timer);
        for (const tap of taps) document.removeEventListener(tap, touch, { capture: true });
      };
    });
    return () => {
      isLeft = true;
      stop();
    };
  }, [app, loaded]);
  return null;
}
