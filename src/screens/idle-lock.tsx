/** A stand that nobody has touched for a while asks again who is there; whatever is on the screen stays. */

import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useApp } from './app-context';

/** Milliseconds. */
const looksEvery = 5000;

export function IdleLock() {
  const app = useApp();
  const loaded = useStore(app.session, (session) => session.loaded);
  useEffect(() => {
    if (!loaded) return;
    const now = () => Date.parse(app.clock.now().claimed);
    const look = () => app.session.getState().lockWhenIdle(now());
    // A tap on a stand that has been alone too long comes too late: looked at first.
    const touch = () => {
      look();
      app.session.getState().touch(now());
    };
    look();
    const timer = setInterval(look, looksEvery);
    const taps = ['pointerdown', 'keydown'] as const;
    for (const tap of taps) document.addEventListener(tap, touch, { capture: true });
    return () => {
      clearInterval(timer);
      for (const tap of taps) document.removeEventListener(tap, touch, { capture: true });
    };
  }, [app, loaded]);
  return null;
}
