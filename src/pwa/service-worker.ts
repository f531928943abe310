/** The service worker: keeps the whole app on the device, and steps in front of the old one only when told to. */

import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & {
  readonly __WB_MANIFEST: (PrecacheEntry | string)[];
};

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();

// Places of the app are hash routes, so every navigation inside the scope is answered by the one page.
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// The first visit must work offline before its first reload: lazy parts may still be missing then.
clientsClaim();

self.addEventListener('message', (event) => {
  if (isSkipWaiting(event.data)) void self.skipWaiting();
});

function isSkipWaiting(data: unknown): boolean {
  return (
    typeof data === 'object' && data !== null && 'type' in data && data.type === 'SKIP_WAITING'
  );
}
