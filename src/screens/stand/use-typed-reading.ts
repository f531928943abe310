/** Hears a wrench that types like a keyboard, wherever the focus is; what is typed into a field is left to the field. */

import { useEffect, useEffectEvent } from 'react';
import { useApp } from '../app-context';

/** Calls back with the text as it was typed, without the key that ended it. */
export function useTypedReading(isListening: boolean, onReading: (text: string) => void): void {
  const app = useApp();
  const heard = useEffectEvent(onReading);
  useEffect(() => {
    if (isListening) return app.onCode((text) => heard(text), 'wrench');
  }, [app, isListening]);
}
