/** Who imports whom, in this house and in houses that break the law. */

import {
  doorsNameWhatTheyShow,
  engineKeepsTheLadder,
  engineRoomsHaveOneDoor,
  everyModuleIsWanted,
  importsLeadSomewhere,
  nothingGoesInCircles,
  packagesStayAtHome,
  placesStandApart,
  roomsKeepTheTable,
  seedsAreReadInTwoPlaces,
  stateKnowsOnlyTheContract,
} from './import-laws';
import { proveLaw } from './prove-law';

proveLaw({
  law: 'A relative import leads to a file',
  breaches: ({ modules }) => importsLeadSomewhere(modules),
  broken: [['./gone', { 'src/words/english.ts': "import { a } from './gone';" }]],
});

proveLaw({
  law: 'A room imports only the rooms its row of the table names',
  breaches: ({ modules }) => roomsKeepTheTable(modules),
  broken: [
    [
      'engine may import nothing',
      {
        'src/engine/base/a.ts': "import { b } from '../../platform/clock';",
        'src/platform/clock.ts': '',
      },
    ],
    [
      'pwa may import nothing',
      { 'src/pwa/a.ts': "export { b } from '../words/b';", 'src/words/b.ts': '' },
    ],
    [
      'screens may import engine, state, print, words, drawing',
      {
        'src/screens/app.tsx': "const lazy = () => import('../storage/contract');",
        'src/storage/contract.ts': '',
      },
    ],
    [
      'words may import engine',
      {
        'src/words/a.ts': "export type A = import('../print/page').Page;",
        'src/print/page.ts': '',
      },
    ],
    ['stands in no room', { 'src/attic/a.ts': '' }],
  ],
  kept: {
    'src/main.tsx': "import { a } from './storage/a'; import './screens/tokens.css';",
    'src/storage/a.ts': "import { ok } from '../engine/base';",
    'src/engine/base/index.ts': '',
    'src/screens/tokens.css': '',
  },
});

proveLaw({
  law: 'state knows storage only by the types of its contract',
  breaches: ({ modules }) => stateKnowsOnlyTheContract(modules),
  broken: [
    [
      'import type',
      {
        'src/state/perform.ts': "import { open } from '../storage/contract';",
        'src/storage/contract.ts': '',
      },
    ],
    [
      'storage/memory/store.ts',
      {
        'src/state/perform.ts': "import type { Store } from '../storage/memory/store';",
        'src/storage/memory/store.ts': '',
      },
    ],
  ],
  kept: {
    'src/state/perform.ts': "import { type Store } from '../storage/contract';",
    'src/storage/contract.ts': '',
  },
});

proveLaw({
  law: 'An engine room imports only rooms on an earlier rung of the ladder',
  breaches: ({ modules }) => engineKeepsTheLadder(modules),
  broken: [
    [
      'job does not stand below torque',
      { 'src/engine/torque/a.ts': "import { b } from '../job';", 'src/engine/job/index.ts': '' },
    ],
    [
      'tyres does not stand below torque',
      {
        'src/engine/torque/a.ts': "import { b } from '../tyres';",
        'src/engine/tyres/index.ts': '',
      },
    ],
    [
      'put engine room attic on the ladder',
      { 'src/engine/attic/a.ts': "import { b } from '../base';", 'src/engine/base/index.ts': '' },
    ],
  ],
  kept: {
    'src/engine/job/a.ts': "import { b } from '../base'; import { c } from './c';",
    'src/engine/job/c.ts': '',
    'src/engine/base/index.ts': '',
  },
});

proveLaw({
  law: 'Engine rooms are entered by their index only',
  breaches: ({ modules }) => engineRoomsHaveOneDoor(modules),
  broken: [
    [
      'enter by engine/base',
      { 'src/engine/units/a.ts': "import { b } from '../base/b';", 'src/engine/base/b.ts': '' },
    ],
    [
      'enter by engine/job',
      { 'src/state/a.ts': "import type { B } from '../engine/job/b';", 'src/engine/job/b.ts': '' },
    ],
  ],
});

proveLaw({
  law: 'An index names what it exports, one by one',
  breaches: ({ modules }) => doorsNameWhatTheyShow(modules),
  broken: [
    ['list the names', { 'src/engine/base/index.ts': "export * from './a';" }],
    ['list the names', { 'src/words/index.ts': "export * as english from './english';" }],
  ],
});

proveLaw({
  law: 'No place of the screens imports another; parts and the drawing know no place and no job',
  breaches: ({ modules }) => placesStandApart(modules),
  broken: [
    [
      'places stand apart',
      {
        'src/screens/stand/a.tsx': "import { B } from '../rack/b';",
        'src/screens/rack/b.tsx': '',
      },
    ],
    [
      'places stand apart',
      {
        'src/screens/parts/a.tsx': "import { B } from '../rack/b';",
        'src/screens/rack/b.tsx': '',
      },
    ],
    [
      'drawing knows no job',
      {
        'src/drawing/a.tsx': "import type { Job } from '../engine/job';",
        'src/engine/job/index.ts': '',
      },
    ],
    [
      'parts knows no job',
      { 'src/screens/parts/a.tsx': "import { b } from '../../state/b';", 'src/state/b.ts': '' },
    ],
  ],
  kept: {
    'src/screens/app.tsx': "import { A } from './stand/a';",
    'src/screens/stand/a.tsx': "import { B } from '../parts/b';",
    'src/screens/parts/b.tsx': "import { c } from '../../drawing/c';",
    'src/drawing/c.tsx': "import type { Bike } from '../engine/bike';",
    'src/engine/bike/index.ts': '',
  },
});

proveLaw({
  law: 'Each package is imported only where it lives',
  breaches: ({ modules }) => packagesStayAtHome(modules),
  broken: [
    ['src/state/a.ts imports react:', { 'src/state/a.ts': "import { useState } from 'react';" }],
    ['imports dexie:', { 'src/storage/memory/a.ts': "import { Dexie } from 'dexie';" }],
    ['imports zod/mini:', { 'src/engine/bike/bike.ts': "import * as z from 'zod/mini';" }],
    ['imports zod: that package has no home', { 'src/exchange/a.ts': "import { z } from 'zod';" }],
    ['imports zustand:', { 'src/state/a.ts': "import { create } from 'zustand';" }],
    ['imports workbox-window:', { 'src/main.tsx': "import { Workbox } from 'workbox-window';" }],
    ['imports jose:', { 'src/exchange/a.ts': "const lazy = () => import('jose');" }],
    ['no home', { 'src/platform/a.ts': "import { readFile } from 'node:fs';" }],
  ],
  kept: {
    'src/engine/bike/bike.schema.ts': "import * as z from 'zod/mini';",
    'src/engine/integrity/a.ts': "import { sha256 } from '@noble/hashes/sha2.js';",
    'src/state/a.ts': "import { createStore } from 'zustand/vanilla';",
    'src/main.tsx':
      "import { createRoot } from 'react-dom/client'; import '@fontsource/barlow/400.css';",
  },
});

proveLaw({
  law: 'Seeds are read by main.tsx and exchange/seeds.ts only',
  breaches: ({ modules }) => seedsAreReadInTwoPlaces(modules),
  broken: [
    [
      'src/words/a.ts imports seeds/joints.json',
      {
        'src/words/a.ts': "import joints from '../../seeds/joints.json';",
        'seeds/joints.json': '',
      },
    ],
  ],
  kept: {
    'src/exchange/seeds.ts': "import joints from '../../seeds/joints.json';",
    'seeds/joints.json': '',
  },
});

proveLaw({
  law: 'No module imports itself, however long the way round',
  breaches: ({ modules }) => nothingGoesInCircles(modules),
  broken: [
    [
      'src/words/a.ts → src/words/b.ts → src/words/c.ts → src/words/a.ts',
      {
        'src/words/a.ts': "import { b } from './b';",
        'src/words/b.ts': "export { c } from './c';",
        'src/words/c.ts': "import type { A } from './a';",
      },
    ],
  ],
  kept: {
    'src/words/a.ts': "import { b } from './b'; import { c } from './c';",
    'src/words/b.ts': "import { c } from './c';",
    'src/words/c.ts': '',
  },
});

proveLaw({
  law: 'Every module and style sheet is imported by another one',
  breaches: ({ modules, tree }) => everyModuleIsWanted(modules, tree),
  broken: [
    ['src/words/a.ts is imported by nobody', { 'src/words/a.ts': '' }],
    ['rack.module.css is imported by nobody', { 'src/screens/rack/rack.module.css': '' }],
  ],
  kept: {
    'src/main.tsx': "import './screens/tokens.css';",
    'src/screens/tokens.css': "@import './type.css';",
    'src/screens/type.css': '',
    'src/pwa/service-worker.ts': '',
    'src/engine/recall/index.ts': '',
  },
});
