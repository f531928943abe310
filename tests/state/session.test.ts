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

describe('a stand left alone', () => {
  const began = Date.parse('2026-11-25T09:00:00Z');
  const minutes = (count: number) => began + count * 60_000;

  test('asks again who is there after its minutes, and nothing typed is lost', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    const { come, touch, lockWhenIdle, draft } = session.getState();
    come('noor');
    draft('finding', 'a scr');
    touch(began);
    lockWhenIdle(minutes(9.9));
    expect(session.getState().person).toBe('noor');
    touch(minutes(9.9));
    lockWhenIdle(minutes(19));
    expect(session.getState().person).toBe('noor');
    lockWhenIdle(minutes(19.9));
    expect(session.getState().person).toBeUndefined();
    expect(session.getState().drafts).toEqual({ finding: 'a scr' });
    expect((await opened(settings)).getState().person).toBeUndefined();
  });

  test('asks again after a reload, too', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    session.getState().come('noor');
    session.getState().touch(began);
    const later = await opened(settings);
    later.getState().lockWhenIdle(minutes(9));
    expect(later.getState().person).toBe('noor');
    later.getState().lockWhenIdle(minutes(10));
    expect(later.getState().person).toBeUndefined();
  });

  test.each<[situation: string, lockAfter: 0 | 5, idle: number, person: string | undefined]>([
    ['never, where the shop says never', 0, 10_000, 'noor'],
    ['after five minutes, where it says five', 5, 5, undefined],
    ['not when the clock was set back', 5, -600, 'noor'],
  ])('asks %s', async (_, lockAfter, idle, person) => {
    const session = await opened();
    session.getState().come('noor');
    session.getState().prefer({ lockAfter });
    session.getState().touch(began);
    session.getState().lockWhenIdle(minutes(idle));
    expect(session.getState().person).toBe(person);
  });

  test('writes down that somebody is there at most once a minute', async () => {
    const { settings } = createMemoryStorage();
    const put = vi.fn(settings.put);
    const session = await opened({ ...settings, put });
    for (let second = 0; second < 120; second += 1) session.getState().touch(began + second * 1000);
    expect(put).toHaveBeenCalledTimes(2);
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
