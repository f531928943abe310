/** Puts the app together from what the composition root hands in. */

import { createStore } from 'zustand/vanilla';
import { compareText } from '../engine/base';
import type { Person, StorageRefusal } from '../storage/contract';
import { createBackupStore } from './backup-state';
import { catalogueWhenNeeded } from './catalogue-when-needed';
import { watchCountedTools } from './counted-operations';
import { filesWhenNeeded } from './files-when-needed';
import { jobsWhenNeeded } from './jobs-when-needed';
import { peopleWhenNeeded } from './people-when-needed';
import type { AppPorts, Durability, OfferedUpdate } from './ports';
import { sortRows } from './rack';
import { createRowsStore } from './rows-store';
import type { App, DeviceActions, LivingData } from './services';
import { createSession } from './session';
import { createShopStore } from './shop';
import { createShopActions } from './shop-actions';
import { createToolActions } from './tool-actions';
import { notingWrongPins } from './wrong-pins';

export function createApp(given: AppPorts): App {
  const { waiting, ...living } = createLivingData(given);
  const atTheStand = () => living.session.getState().person ?? '';
  const ports = { ...given, keys: notingWrongPins(given.keys, given, atTheStand) };
  const person = (): Person | undefined => {
    const { person: id } = living.session.getState();
    return living.people.getState().rows.find((row) => row.id === id && row.active);
  };
  return {
    ...living,
    ...jobsWhenNeeded(async () =>
      (await import('./job-actions')).createJobActions(ports, living, person),
    ),
    ...createShopActions(ports, living),
    ...filesWhenNeeded(async () => {
      const [{ createFileActions }, recordFiles] = await Promise.all([
        import('./file-actions'),
        ports.loadRecordFiles(),
      ]);
      return createFileActions({ ...ports, recordFiles }, living.shop);
    }),
    ...peopleWhenNeeded(async () =>
      (await import('./people-actions')).createPeopleActions(ports, living.session),
    ),
    ...createToolActions(ports, person),
    ...catalogueWhenNeeded(async () =>
      (await import('./catalogue-actions')).createCatalogueActions(ports, living, person),
    ),
    ...createDeviceActions(ports, living, waiting),
  };
}

function createLivingData(
  ports: AppPorts,
): LivingData & { readonly waiting: () => OfferedUpdate | undefined } {
  const { storage, install, watchUpdates, readDurability } = ports;
  const trouble = createStore<{ readonly refusal?: StorageRefusal }>(() => ({}));
  storage.onTrouble((refusal) => trouble.setState(refusal ? { refusal } : {}, true));

  const installNow = () => ({ offered: install.isOffered(), installed: install.isInstalled() });
  const installing = createStore(installNow);
  install.onChange(() => installing.setState(installNow()));

  let offered: OfferedUpdate | undefined;
  const update = createStore(() => ({ offered: false }));
  watchUpdates((newer) => {
    offered = newer;
    update.setState({ offered: true });
  });

  const durability = createStore<Durability>(() => ({ answer: 'unknown' }));
  void readDurability().then((answer) => durability.setState(answer));

  const rack = createRowsStore(storage.watchRows, sortRows);
  return {
    rack,
    people: createRowsStore(storage.people.watch, (rows) =>
      [...rows].sort((a, b) => compareText(a.name, b.name)),
    ),
    tools: createRowsStore(watchCountedTools(storage.tools.watch, rack), (rows) =>
      [...rows].sort((a, b) => compareText(b.kind, a.kind) || compareText(a.id, b.id)),
    ),
    figures: createRowsStore(storage.figures.watch, (rows) =>
      [...rows].sort((a, b) => compareText(a.id, b.id)),
    ),
    catalogueVersions: createRowsStore(storage.catalogueVersions.watch, (rows) =>
      [...rows].sort((a, b) => a.version - b.version || compareText(a.id, b.id)),
    ),
    session: createSession(storage.settings, ports.onLeaving),
    shop: createShopStore(storage.settings),
    backup: createBackupStore(storage.settings),
    install: installing,
    update,
    durability,
    trouble,
    waiting: () => offered,
  };
}

function createDeviceActions(
  ports: AppPorts,
  { durability }: LivingData,
  waiting: () => OfferedUpdate | undefined,
): DeviceActions {
  const { pictureScanner } = ports;
  return {
    printSheet: ports.printPage,
    askToInstall: () => ports.install.ask(),
    applyUpdate: () => waiting()?.apply(),
    askToKeep: async () => durability.setState(await ports.askToKeep()),
    keepAwake: ports.keepAwake,
    readTextFile: ports.readTextFile,
    onCode: ports.onScannedCode,
    canChooseFolder: ports.filePlaces.chooseFolder !== undefined,
    ...(pictureScanner && { scanPicture: (picture) => pictureScanner.codesIn(picture) }),
    clock: ports.clock,
    newId: ports.newId,
  };
}
