/** The whole app without a browser: real state, real keys, real seeds, storage in memory and a clock that stands still. */

import { readCatalogueFile, writeCatalogueFile } from '../../src/exchange/catalogue-file';
import { readDeliveryList } from '../../src/exchange/delivery-list';
import { readCopy } from '../../src/exchange/read-copy';
import { createRecordFiles } from '../../src/exchange/record-files';
import { loadBikesToTry, loadCatalogue, loadDemoSeeds } from '../../src/exchange/seeds';
import { downloadSink } from '../../src/platform/file-places';
import { readTextFile } from '../../src/platform/files';
import { newId } from '../../src/platform/ids';
import { createKeys } from '../../src/platform/keys';
import { type App, type AppPorts, createApp } from '../../src/state';
import type { Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createFixedClock, type FixedClock } from './fixed-clock';

export interface TestApp {
  readonly app: App;
  readonly storage: Storage;
  readonly clock: FixedClock;
  /** Files that were saved, in order. */
  readonly saved: { readonly name: string; readonly content: Blob }[];
  /** Titles that were printed, in order. */
  readonly printed: string[];
  /** As if the page were left. */
  leave(): void;
}

export function createTestApp(changes: Partial<AppPorts> = {}): TestApp {
  const storage = changes.storage ?? createMemoryStorage();
  const clock = createFixedClock();
  const saved: TestApp['saved'] = [];
  const printed: string[] = [];
  const leaving = new Set<() => void>();
  const app = createApp({
    storage,
    createScratchStorage: createMemoryStorage,
    clock,
    newId,
    device: 'tablet-a',
    keys: createKeys(storage.keys),
    loadCatalogue,
    loadDemoSeeds,
    loadBikesToTry,
    readDeliveryList: async (text, known) => readDeliveryList(text, known),
    readCopy: async (text) => readCopy(text),
    writeCatalogueFile: async (file) => writeCatalogueFile(file),
    readCatalogueFile: async (text) => readCatalogueFile(text),
    readTextFile,
    loadRecordFiles: async () => createRecordFiles('What this is.\n'),
    filePlaces: {
      download: (name, type) =>
        downloadSink(name, type, ({ content }) => saved.push({ name, content })),
      inFolder: async () => ({ ok: false, refusal: { code: 'folder-unavailable' } }),
    },
    printPage: (title) => printed.push(title),
    photoFrom: async () => ({ ok: false, refusal: { code: 'photo-not-readable' } }),
    readDurability: async () => ({ answer: 'may-be-cleared' }),
    askToKeep: async () => ({ answer: 'kept' }),
    keepAwake: () => () => undefined,
    onScannedCode: () => () => undefined,
    install: {
      isOffered: () => false,
      isInstalled: () => false,
      ask: async () => 'not-offered',
      onChange: () => () => undefined,
    },
    watchUpdates: () => undefined,
    onLeaving: (listener) => {
      leaving.add(listener);
      return () => leaving.delete(listener);
    },
    ...changes,
  });
  return {
    app,
    storage,
    clock,
    saved,
    printed,
    leave: () => {
      for (const listener of leaving) listener();
    },
  };
}

/** What was expected to be allowed; a refusal fails the test with its facts. */
export function must<T>(result: { ok: true; value: T } | { ok: false; refusal: unknown }): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.refusal)}`);
  return result.value;
}

/** Lets rows that were just written reach those who watch them. */
export async function settled(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 0));
}
