/** What people do with the shop itself: tools, figures, people, and beginning anew. */

import { ok, type Result } from '../engine/base';
import type { StorageRefusal } from '../storage/contract';
import { figureKey } from './figure-book';
import { forgetCustomer } from './forget-customer';
import { startOwnShop } from './own-shop';
import { choosePin } from './people';
import type { AppPorts } from './ports';
import type { LivingData, ShopActions } from './services';
import { attempted } from './storage-refusals';

export function createShopActions(ports: AppPorts, { session }: LivingData): ShopActions {
  const { storage, loadCatalogue, clock } = ports;
  const now = () => ({ by: session.getState().person ?? '', at: clock.now() });
  return {
    saveFigure: (figure) =>
      done(() =>
        storage.figures.put({ ...figure, id: figureKey(figure.make, figure.model, figure.joint) }),
      ),
    removeFigure: (id) => done(() => storage.figures.remove(id)),
    choosePin: (person, pin) => choosePin(ports, person, pin, now()),
    eraseCustomer: (digest) => forgetCustomer(storage, digest),
    loadCatalogue,
    loadMarkets: async () => (await loadCatalogue()).markets,
    // Needed once in the life of a tablet, so it is not in everybody's way.
    openDemoShop: async (onProgress) =>
      (await import('./demo-shop')).openDemoShop(ports, onProgress),
    async startOwnShop(own) {
      const started = await startOwnShop(ports, own);
      if (started.ok) session.getState().come(started.value.id);
      return started;
    },
  };
}

async function done(work: () => Promise<void>): Promise<Result<true, StorageRefusal>> {
  const kept = await attempted(work);
  return kept.ok ? ok(true) : kept;
}
