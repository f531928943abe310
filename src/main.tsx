/** The composition root: clock, ids, database, keys and stores are made here and handed on. */

import '@fontsource/barlow/400.css';
import '@fontsource/barlow/500.css';
import '@fontsource/barlow/600.css';
import '@fontsource/barlow/700.css';
import { createRoot } from 'react-dom/client';
import { photoFrom } from './platform/camera';
import { createClock } from './platform/clock';
import { askToKeep, readDurability } from './platform/durability';
import { downloadSink, folderChooser, sinkInFolder } from './platform/file-places';
import { readTextFile } from './platform/files';
import { deviceId, newId } from './platform/ids';
import type { KeyShelf } from './platform/key-shelf';
import type { Keys } from './platform/keys';
import { onLeaving } from './platform/leaving';
import { printPage } from './platform/print';
import { createPictureScanner, onScannedCode } from './platform/scanner';
import { keepAwake } from './platform/wake-lock';
import { createInstallPrompt } from './pwa/install-prompt';
import { reloadOnceOnLostPart } from './pwa/lost-parts';
import { watchForUpdates } from './pwa/updates';
import { StandbookApp } from './screens/app';
import { createApp } from './state';
import { createDexieStorage } from './storage/dexie/dexie-storage';
import { createMemoryStorage } from './storage/memory/memory-storage';

const install = createInstallPrompt();
reloadOnceOnLostPart();

async function start(place: HTMLElement): Promise<void> {
  const storage = createDexieStorage();
  const app = createApp({
    storage,
    createScratchStorage: createMemoryStorage,
    clock: createClock(),
    newId,
    device: await deviceId(storage.keys),
    keys: keysWhenNeeded(storage.keys),
    // The shapes of the seeds are needed first when a job is opened, not before the first screen.
    loadCatalogue: async () => (await import('./exchange/seeds')).loadCatalogue(),
    loadDemoSeeds: async () => (await import('./exchange/seeds')).loadDemoSeeds(),
    loadBikesToTry: async () => (await import('./exchange/seeds')).loadBikesToTry(),
    readDeliveryList: async (text, known) =>
      (await import('./exchange/delivery-list')).readDeliveryList(text, known),
    readCopy: async (text) => (await import('./exchange/read-copy')).readCopy(text),
    loadRecordFiles: async () => {
      const [{ createRecordFiles }, { recordFileReadme }] = await Promise.all([
        import('./exchange/record-files'),
        import('./words/en/record-file-readme'),
      ]);
      return createRecordFiles(recordFileReadme);
    },
    filePlaces: {
      download: downloadSink,
      chooseFolder: folderChooser(),
      inFolder: sinkInFolder,
    },
    writeCatalogueFile: async (file) =>
      (await import('./exchange/catalogue-file')).writeCatalogueFile(file),
    readCatalogueFile: async (text) =>
      (await import('./exchange/catalogue-file')).readCatalogueFile(text),
    readTextFile,
    printPage,
    photoFrom,
    readDurability,
    askToKeep,
    keepAwake,
    onScannedCode,
    pictureScanner: await createPictureScanner(),
    install,
    watchUpdates: (onOffered) => {
      if (import.meta.env.PROD) watchForUpdates({ onOffered });
    },
    onLeaving,
  });
  createRoot(place).render(<StandbookApp app={app} />);
}

/** Signing is needed a few times a day: its code is fetched from the device at the first of them. */
function keysWhenNeeded(shelf: KeyShelf): Keys {
  let made: Promise<Keys> | undefined;
  const keys = () => {
    made ??= import('./platform/keys').then(({ createKeys }) => createKeys(shelf));
    return made;
  };
  return {
    createFor: async (person, pin) => (await keys()).createFor(person, pin),
    signAs: async (person, pin, payload) => (await keys()).signAs(person, pin, payload),
    isPinOf: async (person, pin) => (await keys()).isPinOf(person, pin),
    holds: async (person) => (await keys()).holds(person),
    keptAs: async () => (await keys()).keptAs(),
    signAsDevice: async (payload) => (await keys()).signAsDevice(payload),
    verify: async (jws, person) => (await keys()).verify(jws, person),
    verifyWith: async (jws, known) => (await keys()).verifyWith(jws, known),
  };
}

const place = document.getElementById('app');
if (place === null) throw new Error('index.html has no #app');
void start(place);
