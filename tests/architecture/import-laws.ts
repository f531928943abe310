/** Laws about who imports whom. Each takes parsed modules and answers what is wrong, in words that say what to do. */

import { posix } from 'node:path';
import {
  engineLadder,
  joblessRooms,
  mayImport,
  packageHomes,
  placelessFolders,
  type Room,
  rooms,
  seedReaders,
  startingPoints,
} from './house';
import type { Import, Module, Tree } from './source-tree';

type Complaints = readonly string[];

/** A relative import leads to a file. */
export function importsLeadSomewhere(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { specifier, isFound }) =>
    isFound ? [] : [`${path} imports ${specifier}, which does not exist: correct the path`],
  );
}

/** A room imports only the rooms its row of the table names. */
export function roomsKeepTheTable(modules: readonly Module[]): Complaints {
  const homeless = modules
    .filter(({ path }) => roomOf(path) === undefined)
    .map(({ path }) => `${path} stands in no room: move it into one, or add the room to house.ts`);
  const breaches = eachImport(modules, ({ path }, { target }) => {
    const [from, to] = [roomOf(path), roomOf(target)];
    if (from === undefined || to === undefined || to === from) return [];
    if (mayImport[from].includes(to)) return [];
    const allowed = mayImport[from].join(', ') || 'nothing';
    return [
      `${path} imports ${target}: ${from} may import ${allowed}. Hand the value in, or move the code`,
    ];
  });
  return [...homeless, ...breaches];
}

/** state knows storage only by the types of its contract. */
export function stateKnowsOnlyTheContract(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { target, isTypeOnly }) => {
    if (roomOf(path) !== 'state' || roomOf(target) !== 'storage') return [];
    if (target === 'src/storage/contract.ts' && isTypeOnly) return [];
    return [
      `${path} imports ${target}: use \`import type\` from storage/contract and take it as argument`,
    ];
  });
}

/** An engine room imports only rooms on an earlier rung of the ladder. */
export function engineKeepsTheLadder(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { target }) => {
    const from = engineRoomOf(path);
    const to = engineRoomOf(target);
    if (from === undefined || to === undefined || from === to) return [];
    const [here, there] = [rungOf(from), rungOf(to)];
    if (here < 0 || there < 0) {
      return [
        `${path} imports ${target}: put engine room ${here < 0 ? from : to} on the ladder in house.ts`,
      ];
    }
    return there < here
      ? []
      : [
          `${path} imports ${target}: ${to} does not stand below ${from}. Move what both need further down`,
        ];
  });
}

/** Engine rooms are entered by their index only. */
export function engineRoomsHaveOneDoor(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { target }) => {
    const room = engineRoomOf(target);
    if (room === undefined || engineRoomOf(path) === room) return [];
    if (target === `src/engine/${room}/index.ts`) return [];
    return [
      `${path} imports ${target}: enter by engine/${room}, and export the name there if it is public`,
    ];
  });
}

/** An index names what it exports, one by one. */
export function doorsNameWhatTheyShow(modules: readonly Module[]): Complaints {
  return modules
    .filter(({ exportsEverything }) => exportsEverything)
    .map(({ path }) => `${path} has \`export *\`: list the names one by one`);
}

/** No place of the screens imports another; parts and the drawing know no place and no job. */
export function placesStandApart(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { target }) => {
    const from = screensFolderOf(path);
    const to = screensFolderOf(target);
    if (from !== undefined && to !== undefined && to !== from && !placelessFolders.includes(to)) {
      return [
        `${path} imports ${target}: places stand apart. Move what both need to screens/parts`,
      ];
    }
    const room = roomOf(path) ?? '';
    const isJobless = joblessRooms.includes(room) || placelessFolders.includes(from ?? '');
    const knowsWork = roomOf(target) === 'state' || engineRoomOf(target) === 'job';
    return isJobless && knowsWork
      ? [`${path} imports ${target}: ${from ?? room} knows no job. Take plain values as props`]
      : [];
  });
}

/** Each package is imported only where it lives. */
export function packagesStayAtHome(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { specifier, isRelative }) => {
    if (isRelative) return [];
    const homes = homesOf(specifier);
    if (homes === undefined) {
      return [`${path} imports ${specifier}: that package has no home. Decide on one in house.ts`];
    }
    return homes.some((home) => home.test(path))
      ? []
      : [
          `${path} imports ${specifier}: it lives in ${homes.map(String).join(' and ')}. Use it there`,
        ];
  });
}

/** The data the app is born with is read in two places only. */
export function seedsAreReadInTwoPlaces(modules: readonly Module[]): Complaints {
  return eachImport(modules, ({ path }, { target, isRelative }) =>
    isRelative && target.startsWith('seeds/') && !seedReaders.includes(path)
      ? [
          `${path} imports ${target}: only ${seedReaders.join(' and ')} read seeds. Take them as argument`,
        ]
      : [],
  );
}

/** No module imports itself, however long the way round. */
export function nothingGoesInCircles(modules: readonly Module[]): Complaints {
  const targets = new Map(
    modules.map(({ path, imports }) => [path, imports.map((one) => one.target)]),
  );
  const finished = new Set<string>();
  const circles: string[] = [];
  const visit = (path: string, way: readonly string[]) => {
    if (finished.has(path)) return;
    const start = way.indexOf(path);
    if (start >= 0) {
      circles.push(
        `${[...way.slice(start), path].join(' → ')}: move what both need into a third file`,
      );
      return;
    }
    for (const target of targets.get(path) ?? []) visit(target, [...way, path]);
    finished.add(path);
  };
  for (const { path } of modules) visit(path, []);
  return circles;
}

/** Every module and style sheet is imported by another one. The doors of engine rooms are its public face, and stand open. */
export function everyModuleIsWanted(modules: readonly Module[], tree: Tree): Complaints {
  const wanted = new Set(modules.flatMap(({ imports }) => imports.map(({ target }) => target)));
  for (const [path, text] of tree) {
    if (!path.endsWith('.css')) continue;
    for (const [, from = ''] of text.matchAll(/(?:@import|from)\s+['"](\.[^'"]+)['"]/g)) {
      wanted.add(posix.join(posix.dirname(path), from));
    }
  }
  return [...tree.keys()]
    .filter((path) => /^src\/.*\.(ts|tsx|css)$/.test(path) && !path.endsWith('.d.ts'))
    .filter((path) => !startingPoints.includes(path))
    .filter((path) => !/^src\/engine\/[^/]+\/index\.ts$/.test(path))
    .filter((path) => !wanted.has(path))
    .map((path) => `${path} is imported by nobody: use it or delete it`);
}

function eachImport(
  modules: readonly Module[],
  judge: (module: Module, one: Import) => Complaints,
): Complaints {
  return modules.flatMap((module) => module.imports.flatMap((one) => judge(module, one)));
}

function roomOf(path: string): Room | undefined {
  if (!path.startsWith('src/')) return undefined;
  const name = path.split('/')[1];
  return rooms.find((room) => room === name);
}

function engineRoomOf(path: string): string | undefined {
  return /^src\/engine\/([^/]+)\//.exec(path)?.[1];
}

function screensFolderOf(path: string): string | undefined {
  return /^src\/screens\/([^/]+)\//.exec(path)?.[1];
}

function rungOf(room: string): number {
  return engineLadder.findIndex((rung) => rung.some((name) => name === room));
}

function homesOf(specifier: string): readonly RegExp[] | undefined {
  const exact = packageHomes[specifier];
  if (exact !== undefined) return exact;
  const family = Object.keys(packageHomes).find(
    (name) => name.endsWith('*') && specifier.startsWith(name.slice(0, -1)),
  );
  return family === undefined ? undefined : packageHomes[family];
}
