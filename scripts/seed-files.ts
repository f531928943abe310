/** Reads the seed files from disk and parses each with its schema; what is wrong with a file is said with its place. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as z from 'zod/mini';
import { type Zone, zones } from '../src/engine/base';
import { type Point, pointSchema } from '../src/engine/inspection';
import { type MarketRules, marketSchema } from '../src/engine/market';
import {
  type Joint,
  jointSchema,
  type Part,
  partSchema,
  type Step,
  stepSchema,
} from '../src/engine/plan';
import { type DemoBikes, demoBikesSchema } from '../src/exchange/demo.schema';

export const seedsFolder = fileURLToPath(new URL('../seeds', import.meta.url));

export type Seeds = {
  /** In the order of the zones, then of their files: a catalogue position is the tie-break of a plan. */
  readonly steps: readonly Step[];
  readonly joints: readonly Joint[];
  readonly parts: readonly Part[];
  readonly points: readonly Point[];
  readonly markets: readonly MarketRules[];
  readonly bikes: DemoBikes['bikes'];
};

/** The parsed seeds, and one line for each thing that is wrong; a file that does not parse gives nothing. */
export function readSeeds(folder: string): { readonly seeds: Seeds; readonly faults: string[] } {
  const faults: string[] = [];
  const read = <T>(path: string, schema: z.ZodMiniType<T>): T | undefined => {
    const parsed = parseSeed(path, readFileSync(join(folder, path), 'utf8'), schema);
    faults.push(...parsed.faults);
    return parsed.value;
  };
  const strayFiles = readdirSync(join(folder, 'steps')).filter(
    (name) => !zones.some((zone) => name === `${zone}.json`),
  );
  faults.push(...strayFiles.map((name) => `steps/${name}: no zone has this name`));

  const steps = zones.flatMap((zone) => {
    const listed = read(`steps/${zone}.json`, z.object({ steps: z.array(stepSchema) }))?.steps;
    faults.push(...stepsOutside(zone, listed ?? []));
    return listed ?? [];
  });
  const markets = readdirSync(join(folder, 'markets'))
    .sort()
    .flatMap((name) => read(`markets/${name}`, marketSchema) ?? []);
  const seeds = {
    steps,
    joints: read('joints.json', z.object({ joints: z.array(jointSchema) }))?.joints ?? [],
    parts: read('parts.json', z.object({ parts: z.array(partSchema) }))?.parts ?? [],
    points: read('points.json', z.object({ points: z.array(pointSchema) }))?.points ?? [],
    markets,
    bikes: read('demo/bikes.json', demoBikesSchema)?.bikes ?? [],
  };
  return { seeds, faults };
}

/** Parses one seed, and also names every member that its schema does not know: a misspelt one would be lost in silence. */
export function parseSeed<T>(
  path: string,
  text: string,
  schema: z.ZodMiniType<T>,
): { readonly value?: T; readonly faults: string[] } {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    return { faults: [`${path}: not JSON (${(error as Error).message})`] }; // JSON.parse throws nothing else
  }
  const parsed = schema.safeParse(raw);
  if (!parsed.success) {
    const faults = parsed.error.issues.map(
      (issue) => `${path}: ${placeOf(raw, issue.path)}: ${issue.message}`,
    );
    return { faults };
  }
  const lost = lostMembers(raw, parsed.data);
  return {
    value: parsed.data,
    faults: lost.map((place) => `${path}: ${placeOf(raw, place)}: the schema knows no such member`),
  };
}

function stepsOutside(zone: Zone, steps: readonly Step[]): string[] {
  return steps
    .filter((step) => step.zone !== zone)
    .map((step) => `steps/${zone}.json: ${step.id} is in zone ${step.zone}`);
}

type Place = readonly PropertyKey[];

function lostMembers(raw: unknown, parsed: unknown, place: Place = []): Place[] {
  if (typeof raw !== 'object' || raw === null) return [];
  if (typeof parsed !== 'object' || parsed === null) return [];
  return Object.entries(raw).flatMap(([name, value]) => {
    const key = Array.isArray(raw) ? Number(name) : name;
    if (!Object.hasOwn(parsed, name)) return [[...place, key]];
    return lostMembers(value, Reflect.get(parsed, name), [...place, key]);
  });
}

/** A place in a file as a person finds it: list members by their id where they have one. */
function placeOf(raw: unknown, place: Place): string {
  let value = raw;
  const names = place.map((key) => {
    value = typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
    const id = typeof value === 'object' && value !== null ? Reflect.get(value, 'id') : undefined;
    return typeof key === 'number' && typeof id === 'string' ? id : String(key);
  });
  return names.join(' › ');
}
