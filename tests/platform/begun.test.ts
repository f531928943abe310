/** A trace of a real shop outlasts its database, and only a date is in it. */

import { expect, test } from 'vitest';
import { createBegun } from '../../src/platform/begun';

test('the last day is remembered beside other cookies, and forgotten when asked', () => {
  const page = { cookie: '' };
  const begun = createBegun(page);
  expect(begun.last()).toBeUndefined();
  begun.note('2026-11-25');
  expect(page.cookie).toMatch(/^standbook-begun=2026-11-25; max-age=34560000; .*samesite=strict$/);
  page.cookie = 'theme=night; standbook-begun=2026-11-25; a=b';
  expect(begun.last()).toBe('2026-11-25');
  begun.forget();
  expect(page.cookie).toContain('max-age=0');
});

test.each(['', 'standbook-begun=', 'xstandbook-begun=2026-11-25', 'standbook-begun=soon'])(
  '%j is no trace',
  (cookie) => {
    expect(createBegun({ cookie }).last()).toBeUndefined();
  },
);
