/** A stand left alone asks again who is there, and loses nothing. */

import { describe, expect, test, vi } from 'vitest';
import { createSession } from '../../src/state/session';
import { createStandLock } from '../../src/state/stand-lock';
import type { Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { settled } from '../support/test-app';

let leave: () => void = () => undefined;

async function opened(settings: Storage['settings']) {
  const session = createSession(settings, (listener) => {
    leave = listener;
    return () => undefined;
  });
  await settled();
  return session;
}

describe('a stand left alone', () => {
  const began = Date.parse('2026-11-25T09:00:00Z');
  const minutes = (count: number) => began + count * 60_000;

  test('asks again who is there after its minutes, and nothing typed is lost', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    const { come, draft } = session.getState();
    const { touch, look } = await createStandLock(settings, session);
    come('noor');
    draft('finding', 'a scr');
    touch(began);
    look(minutes(9.9));
    expect(session.getState().person).toBe('noor');
    touch(minutes(9.9));
    look(minutes(19));
    expect(session.getState().person).toBe('noor');
    look(minutes(19.9));
    expect(session.getState().person).toBeUndefined();
    expect(session.getState().drafts).toEqual({ finding: 'a scr' });
    leave();
    const again = (await opened(settings)).getState();
    expect(again.person).toBeUndefined();
    expect(again.drafts).toEqual({ finding: 'a scr' });
  });

  test('asks again after a reload, too', async () => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    session.getState().come('noor');
    (await createStandLock(settings, session)).touch(began);
    const later = await opened(settings);
    const lock = await createStandLock(settings, later);
    lock.look(minutes(9));
    expect(later.getState().person).toBe('noor');
    lock.look(minutes(10));
    expect(later.getState().person).toBeUndefined();
  });

  test.each<[situation: string, lockAfter: 0 | 5, idle: number, person: string | undefined]>([
    ['never, where the shop says never', 0, 10_000, 'noor'],
    ['after five minutes, where it says five', 5, 5, undefined],
    ['not when the clock was set back', 5, -600, 'noor'],
  ])('asks %s', async (_, lockAfter, idle, person) => {
    const { settings } = createMemoryStorage();
    const session = await opened(settings);
    session.getState().come('noor');
    session.getState().prefer({ lockAfter });
    const lock = await createStandLock(settings, session);
    lock.touch(began);
    lock.look(minutes(idle));
    expect(session.getState().person).toBe(person);
  });

  test('writes down that somebody is there at most once a minute', async () => {
    const { settings } = createMemoryStorage();
    const put = vi.fn(settings.put);
    const session = await opened(settings);
    const lock = await createStandLock({ ...settings, put }, session);
    for (let second = 0; second < 120; second += 1) lock.touch(began + second * 1000);
    expect(put).toHaveBeenCalledTimes(2);
  });
});
