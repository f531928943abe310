/** What people do with the shop itself: tools, figures, people, copies, and beginning anew. */

import { ok, type Result } from '../engine/base';
import type { StorageRefusal } from '../storage/contract';
import { figureKey } from './figure-book';
import { startOwnShop } from './own-shop';
import { addPerson, changePin, retirePerson } from './people';
import type { AppPorts } from './ports';
import type { LivingData, ShopActions } from './services';
import { readCopy, saveCopy } from './shop-copy';
import { attempted } from './storage-refusals';

export function createShopActions(ports: AppPorts, { session }: LivingData): ShopActions {
  const { storage, loadCatalogue } = ports;
  return {
    saveFigure: (figure) =>
      done(() =>
        storage.figures.put({ ...figure, id: figureKey(figure.make, figure.model, figure.joint) }),
      ),
    removeFigure: (id) => done(() => storage.figures.remove(id)),
    addPerson: (person) => addPerson(ports, person),
    changePin: (person, pin) => changePin(ports, person, pin),
    retirePerson: (id) => retirePerson(storage, id),
    eraseCustomer: (digest) => done(() => storage.customers.remove(digest)),
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
    saveCopy: () => saveCopy(ports),
    readCopy: (text) => readCopy(ports, text),
  };
}

async function done(work: () => Promise<void>): Promise<Result<true, StorageRefusal>> {
  const kept = await attempted(work);
  return kept.ok ? ok(true) : kept;
}
