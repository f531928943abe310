/** The composition root: clock, ids, database, keys and stores are made here and handed on. */

import '@fontsource/barlow/400.css';
import '@fontsource/barlow/500.css';
import '@fontsource/barlow/600.css';
import '@fontsource/barlow/700.css';
import { createRoot } from 'react-dom/client';
import { readDeliveryList } from './exchange/delivery-list';
import { readCopy } from './exchange/read-copy';
import { loadCatalogue, loadDemoSeeds } from './exchange/seeds';
import { writeCopy } from './exchange/write-copy';
import { photoFrom } from './platform/camera';
import { createClock } from './platform/clock';
import { askToKeep, readDurability } from './platform/durability';
import { readTextFile, saveFile } from './platform/files';
import { deviceId, newId } from './platform/ids';
import { createKeys } from './platform/keys';
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
    keys: createKeys(storage.keys),
    loadCatalogue,
    loadDemoSeeds,
    readDeliveryList,
    writeCopy,
    readCopy,
    readTextFile,
    saveFile,
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

function onLeaving(listener: () => void): () => void {
  const whenHidden = () => document.visibilityState === 'hidden' && listener();
  window.addEventListener('pagehide', listener);
  document.addEventListener('visibilitychange', whenHidden);
  return () => {
    window.removeEventListener('pagehide', listener);
    document.removeEventListener('visibilitychange', whenHidden);
  };
}

const place = document.getElementById('app');
if (place === null) throw new Error('index.html has no #app');
void start(place);
