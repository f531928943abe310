/** Leaving is told when the page is hidden or closed, and no more once nobody listens. */

import { expect, test } from 'vitest';
import { onLeaving } from '../../src/platform/leaving';

test('a page that is hidden or closed tells it; one that is seen again does not', () => {
  const document = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  const page = Object.assign(new EventTarget(), { document });
  let told = 0;
  const stop = onLeaving(
    () => {
      told += 1;
    },
    page as unknown as Window,
  ); // as much of a window as is used
  document.dispatchEvent(new Event('visibilitychange'));
  expect(told).toBe(0);
  document.visibilityState = 'hidden';
  document.dispatchEvent(new Event('visibilitychange'));
  page.dispatchEvent(new Event('pagehide'));
  expect(told).toBe(2);
  stop();
  page.dispatchEvent(new Event('pagehide'));
  expect(told).toBe(2);
});
