/** A part that cannot be loaded costs one reload, never two. */

import { expect, test, vi } from 'vitest';
import { reloadOnceOnLostPart } from '../../src/pwa/lost-parts';

function losePart(): Event {
  const event = new Event('vite:preloadError', { cancelable: true });
  window.dispatchEvent(event);
  return event;
}

test('the first lost part reloads, a second one after the reload is an error', () => {
  const kept = new Map<string, string>();
  const memory = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
  };
  const reload = vi.fn();
  reloadOnceOnLostPart({ memory, reload });

  expect(losePart().defaultPrevented).toBe(true);
  expect(reload).toHaveBeenCalledOnce();
  expect(losePart().defaultPrevented).toBe(false);
  expect(reload).toHaveBeenCalledOnce();
});
