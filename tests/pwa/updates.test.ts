/** A newer version is offered; only `apply()` lets it in and reloads. */

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type OfferedUpdate, watchForUpdates } from '../../src/pwa/updates';

/** A service worker that takes over as soon as it is told to, as a browser's would. */
class Worker extends EventTarget {
  readonly told: unknown[] = [];
  scriptURL = new URL('./service-worker.js', location.href).href;
  state = 'installed';
  constructor(private readonly container: Container) {
    super();
  }
  postMessage(message: unknown) {
    this.told.push(message);
    this.container.controller = this;
    this.container.dispatchEvent(new Event('controllerchange'));
  }
}

class Container extends EventTarget {
  controller: Worker | null = null;
  readonly registration = Object.assign(new EventTarget(), {
    waiting: null as Worker | null,
    installing: null,
    active: null,
    update: vi.fn(async () => {}),
  });
  readonly register = vi.fn(async () => this.registration);
}

let container: Container;

beforeEach(() => {
  container = new Container();
  Object.defineProperty(navigator, 'serviceWorker', { value: container, configurable: true });
});

afterEach(() => {
  Reflect.deleteProperty(navigator, 'serviceWorker');
  vi.useRealTimers();
});

test('a version that waits is offered; nothing is told or reloaded until apply, then both once', async () => {
  const old = new Worker(container);
  const waiting = new Worker(container);
  container.controller = old;
  container.registration.waiting = waiting;
  const reload = vi.fn();
  const offers: OfferedUpdate[] = [];
  const watch = watchForUpdates({ onOffered: (update) => offers.push(update), reload });

  await vi.waitFor(() => expect(offers).toHaveLength(1));
  expect(waiting.told).toEqual([]);
  expect(reload).not.toHaveBeenCalled();

  offers[0]?.apply();
  offers[0]?.apply();
  await vi.waitFor(() => expect(reload).toHaveBeenCalledOnce());
  expect(waiting.told).toEqual([{ type: 'SKIP_WAITING' }]);
  watch.stop();
});

test('a worker that takes over unasked, from another tab or at the first visit, reloads nothing', async () => {
  const reload = vi.fn();
  const onOffered = vi.fn();
  const watch = watchForUpdates({ onOffered, reload });
  await watch.check();
  container.controller = new Worker(container);
  container.dispatchEvent(new Event('controllerchange'));
  await watch.check();
  expect(reload).not.toHaveBeenCalled();
  expect(onOffered).not.toHaveBeenCalled();
  watch.stop();
});

test('it looks every hour, and being offline is no fault', async () => {
  vi.useFakeTimers();
  container.registration.update.mockRejectedValue(new TypeError('offline'));
  const watch = watchForUpdates({ onOffered: () => {} });
  await vi.advanceTimersByTimeAsync(2.5 * 60 * 60 * 1000);
  expect(container.registration.update).toHaveBeenCalledTimes(2);
  watch.stop();
  await vi.advanceTimersByTimeAsync(2 * 60 * 60 * 1000);
  expect(container.registration.update).toHaveBeenCalledTimes(2);
});

test('a browser that refuses to keep the app says so', async () => {
  container.register.mockRejectedValue(new Error('refused'));
  const onUnavailable = vi.fn();
  watchForUpdates({ onOffered: () => {}, onUnavailable }).stop();
  await vi.waitFor(() => expect(onUnavailable).toHaveBeenCalledWith(new Error('refused')));

  Reflect.deleteProperty(navigator, 'serviceWorker');
  onUnavailable.mockClear();
  watchForUpdates({ onOffered: () => {}, onUnavailable }).stop();
  expect(onUnavailable).toHaveBeenCalledOnce();
});
