/** The shapes of a record file as JSON Schema, made from the very schemas that read it. */

import { readFileSync, writeFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { entrySchema } from '../src/engine/integrity';
import { eventSchema, jobPlanSchema } from '../src/engine/job';
import {
  customersSchema,
  manifestSchema,
  peopleSchema,
  shopSchema,
} from '../src/exchange/bundle.schema';

export const schemaFolder = new URL('../docs/record-file/', import.meta.url);

const shapes = {
  manifest: [manifestSchema, 'manifest.json: what belongs to which record'],
  entry: [entrySchema, 'One line of logs/*.jsonl; its event has the shape of event.schema.json'],
  event: [
    eventSchema,
    'What happened, as this version writes it; newer kinds are kept and passed on',
  ],
  plan: [jobPlanSchema, 'plans/*.json: what was frozen when the job began'],
  people: [peopleSchema, 'people.json: names and public keys'],
  customers: [customersSchema, 'customers.json: only where it was asked for'],
  shop: [shopSchema, 'shop.json: only in a backup'],
} as const;

export const schemaNames = Object.keys(shapes) as (keyof typeof shapes)[]; // the members of the object above

/** The text of `docs/record-file/<name>.schema.json` as it must stand there. */
export function schemaText(name: keyof typeof shapes): string {
  const [shape, description] = shapes[name];
  // As a reader sees it: members that may be left out may, and what a newer version adds is allowed.
  // Conditions stand inside conditions: what is used more than once is named once.
  const schema = z.toJSONSchema(shape, {
    io: 'input',
    unrepresentable: 'any',
    reused: name === 'shop' ? 'ref' : 'inline',
  });
  return `${JSON.stringify({ title: name, description, ...schema }, null, 2)}\n`;
}

export function schemaFile(name: string): URL {
  return new URL(`${name}.schema.json`, schemaFolder);
}

export function schemaOnDisk(name: string): string {
  return readFileSync(schemaFile(name), 'utf8');
}

export function writeSchemas(): void {
  for (const name of schemaNames) writeFileSync(schemaFile(name), schemaText(name));
}
