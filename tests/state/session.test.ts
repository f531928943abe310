/** Who is at the stand, how they like it, and what they were typing: there again when the app opens again. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createSession } from '../../src/state/session';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';

let leave: () => void;
const onLeaving = (listener: () => void) => {
  leave = listener;
  return () => undefined;
};

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

async function opened(settings = createMemoryStorage().settings) {
  const session = createSession(settings, onLeaving);
  await vi.advanceTimersByTimeAsync(0);
  return session;
}

describe('a session', () => {
  test('begins with nobody, and says when it has been read', async () => {
    const session = await opened();
    expect(session.getState()).toMatchObject({
      loaded: true,
      preferences: { theme: 'system', torqueUnit: 'N·m', pressureUnit: 'bar' },
      drafts: {},
    });
    expect(session.getState().person).toBeUndefined();
  });

  test('remembers who is at the stand and how they like it', async () => {
    const { settings } = createMemoryStorage();
    const first = await opened(settings);
    first.getState().come('noor');
    first.getState().prefer({ theme: 'night', pressureUnit: 'psi' });
    expect((await opened(settings)).getState()).toMatchObject({
      person: 'noor',
      preferences: { theme: 'night', pressureUnit: 'psi', torqueUnit: 'N·m' },
    });
    first.getState().leave();
    expect((await opened(settings)).getState().person).toBeUndefined();
  });

  test('takes preferences it does not know for the first ones', async () => {
    const { settings } = createMemoryStorage();
    await settings.put({
      id: 'preferences',
      value: { theme: 'sepia', torqueUnit: 'dyn', stand: 7, installPutOff: 'yes' },
    });
    expect((await opened(settings)).getState().preferences).toEqual({
      theme: 'system',
      torqueUnit: 'N·m',
      pressureUnit: 'bar',
      stand: 'Stand 1',
      askPin: false,
      lockAfter: 10,
      installPutOff: false,
    });
  });

  test('remembers that the offer to install was put off', async () => {
    const { settings } = createMemoryStorage();
    const first = await opened(settings);
    expect(first.getState().preferences.installPutOff).toBe(false);
    first.getState().prefer({ installPutOff: true });
    expect((await opened(settings)).getState().preferences.installPutOff).toBe(true);
  });
});

describe('a draft', () => {
  test('is on the disk 300 ms after a key, however fast the keys follow', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    for (const text of ['a', 'a s', 'a scr', 'a scratch']) {
      session.getState().draft('finding', text);
      await vi.advanceTimersByTimeAsync(100);
    }
    expect((await settings.get('drafts'))?.value).toEqual({ finding: 'a scr' });
    await vi.advanceTimersByTimeAsync(300);
    expect((await settings.get('drafts'))?.value).toEqual({ finding: 'a scratch' });
  });

  test('is on the disk at once when the page is left, and comes back', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    session.getState().draft('finding', 'a scratch');
    leave();
    expect((await opened(settings)).getState().drafts).toEqual({ finding: 'a scratch' });
  });

  test('goes when it is emptied', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    session.getState().draft('finding', 'a scratch');
    session.getState().draft('note', 'b');
    session.getState().draft('finding', '');
    leave();
    expect((await opened(settings)).getState().drafts).toEqual({ note: 'b' });
  });

  test('that could not be kept is kept the next time', async () => {
    const { settings } = createMemoryStorage();
    let isFull = true;
    const put = settings.put;
    const session = await opened({
      ...settings,
      put: (row) => (isFull ? Promise.reject(new Error('full')) : put(row)),
    });
    session.getState().draft('finding', 'a scratch');
    leave();
    await vi.advanceTimersByTimeAsync(0);
    isFull = false;
    leave();
    expect((await settings.get('drafts'))?.value).toEqual({ finding: 'a scratch' });
  });
});
