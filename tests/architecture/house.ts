/** The house as data: its rooms, who may import whom, and where each package lives. */

export const rooms = [
  'engine',
  'platform',
  'storage',
  'exchange',
  'words',
  'drawing',
  'print',
  'state',
  'screens',
  'pwa',
  'hub',
  'main.tsx',
] as const;

export type Room = (typeof rooms)[number];

/** What a room may import besides itself. */
export const mayImport: Readonly<Record<Room, readonly Room[]>> = {
  engine: [],
  platform: ['engine'],
  storage: ['engine'],
  exchange: ['engine'],
  words: ['engine'],
  drawing: ['engine'], // the bike, drawn: the screens and the sheet both show it
  print: ['engine', 'words', 'drawing'],
  state: ['engine', 'storage'], // of storage only the types of contract.ts: see the law of the contract
  screens: ['engine', 'state', 'print', 'words', 'drawing'],
  pwa: [],
  hub: ['engine', 'exchange'],
  'main.tsx': rooms,
};

/** The engine's ladder: a room may import what stands on an earlier rung. */
export const engineLadder = [
  ['base'],
  ['units', 'integrity'],
  ['torque', 'tyres', 'fit'],
  ['bike'],
  ['market', 'plan'],
  ['inspection'],
  ['job'],
  ['sheet', 'schedule', 'figures', 'recall'],
] as const;

/** Folders of screens that know no place and no job; every other folder there is a place. */
export const placelessFolders = ['parts', 'drawing'];

/** Rooms that take plain values and know no job. */
export const joblessRooms = ['drawing'];

/** Modules no other module of the app imports: the page, the browser and the tests start them. */
export const startingPoints = [
  'src/main.tsx',
  'src/pwa/service-worker.ts',
  'src/storage/memory/memory-storage.ts',
];

/** Where each package may be imported, as patterns of paths. A name that ends in `*` stands for a family. */
export const packageHomes: Readonly<Record<string, readonly RegExp[]>> = {
  react: [/^src\/(screens|print|drawing)\//, /^src\/main\.tsx$/],
  'react-dom/client': [/^src\/main\.tsx$/],
  'react-dom': [/^src\/(screens|print)\//],
  wouter: [/^src\/screens\//],
  'wouter/*': [/^src\/screens\//],
  zustand: [/^src\/screens\//],
  'zustand/*': [/^src\/(state|screens)\//],
  dexie: [/^src\/storage\/dexie\//],
  'zod/mini': [/^src\/engine\/.*\.schema\.ts$/, /^src\/exchange\//],
  'workbox-*': [/^src\/pwa\//],
  jose: [/^src\/platform\//],
  papaparse: [/^src\/exchange\//],
  fflate: [/^src\/exchange\//],
  uqr: [/^src\/print\//],
  signature_pad: [/^src\/screens\//],
  '@noble/hashes/*': [/^src\/engine\//],
  canonicalize: [/^src\/engine\//],
  'simple-statistics': [/^src\/engine\//],
  '@fontsource/barlow/*': [/^src\/(screens|print)\//, /^src\/main\.tsx$/],
};

/** Who may import the data the app is born with. */
export const seedReaders = ['src/main.tsx', 'src/exchange/seeds.ts'];

/** Names that say nothing about what is inside. */
export const emptyNames = ['util', 'utils', 'helper', 'helpers', 'common', 'misc', 'types'];

export const mostLinesOfCode = 300;

/** What would make the engine answer differently on another machine, at another time, or outside its own rooms. */
export const forbiddenInEngine = {
  // what the engine's compiler settings do not know at all (window, fetch, timers) needs no law
  names: ['process', 'globalThis', 'crypto', 'Intl', 'require'],
  members: ['Date.now', 'Math.random'],
  methods:
    /^(toLocale\w*|localeCompare|getTimezoneOffset|get(FullYear|Month|Date|Day|Hours|Minutes))$/,
} as const;
