/** What changes the catalogue, fetched from the device when a supervisor first does: no other place needs it. */

import type { CatalogueActions } from './services';

export function catalogueWhenNeeded(load: () => Promise<CatalogueActions>): CatalogueActions {
  return {
    changeCatalogue: async (asked, onProgress) => (await load()).changeCatalogue(asked, onProgress),
    loadBikesToTry: async () => (await load()).loadBikesToTry(),
    saveCatalogueFile: async () => (await load()).saveCatalogueFile(),
    readCatalogueFile: async (text) => (await load()).readCatalogueFile(text),
    takeInCatalogue: async (asked, onProgress) => (await load()).takeInCatalogue(asked, onProgress),
  };
}
