/** The published shapes are the ones that the app reads with, and a written file has them. */

import { describe, expect, test } from 'vitest';
import { schemaNames, schemaOnDisk, schemaText } from '../../scripts/record-file-schemas';
import { bikeFrom, mountainBike } from '../support/bikes';
import { membersOf, textOf } from '../support/forged-file';
import { createTablet } from '../support/tablets';

test.each(schemaNames)('%s is published as it is read', (name) => {
  expect(schemaOnDisk(name), 'run `npm run schemas`').toBe(schemaText(name));
});

type Schema = Readonly<Record<string, unknown>>;

/** As much of JSON Schema 2020-12 as the published files use; a keyword that is not known here fails the test. */
function faultsOf(schema: Schema, value: unknown, at = ''): readonly string[] {
  const definedFirst = Object.entries(schema).sort(
    ([a], [b]) => Number(b === '$defs') - Number(a === '$defs'),
  );
  return definedFirst.flatMap(([keyword, wanted]) => {
    const check = keywords[keyword];
    if (check === undefined) return [`${at}: unknown keyword ${keyword}`];
    return check(wanted, value, at);
  });
}

type Check = (wanted: unknown, value: unknown, at: string) => readonly string[];
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const says = (isGood: boolean, fault: string) => (isGood ? [] : [fault]);
const nothing: Check = () => [];

/** The definitions of the file that is being read; they are looked at before everything that uses them. */
let definitions: Readonly<Record<string, Schema>> = {};

const keywords: Readonly<Record<string, Check>> = {
  $schema: nothing,
  $defs: (wanted) => {
    definitions = wanted as Record<string, Schema>;
    return [];
  },
  $ref: (wanted, value, at) => {
    const named = definitions[String(wanted).replace('#/$defs/', '')];
    return named === undefined ? [`${at}: ${wanted} is not defined`] : faultsOf(named, value, at);
  },
  title: nothing,
  description: nothing,
  default: nothing,
  readOnly: nothing,
  format: nothing, // an annotation, as the standard has it
  type: (wanted, value, at) =>
    says(typesOf(value).includes(String(wanted)), `${at} is no ${wanted}`),
  const: (wanted, value, at) => says(wanted === value, `${at} is not ${wanted}`),
  enum: (wanted, value, at) => says((wanted as unknown[]).includes(value), `${at} is none of them`),
  pattern: (wanted, value, at) =>
    says(
      typeof value !== 'string' || new RegExp(String(wanted), 'u').test(value),
      `${at} has no such form`,
    ),
  minLength: (wanted, value, at) =>
    says(typeof value !== 'string' || value.length >= Number(wanted), `${at} is too short`),
  maxLength: (wanted, value, at) =>
    says(typeof value !== 'string' || value.length <= Number(wanted), `${at} is too long`),
  minimum: (wanted, value, at) =>
    says(typeof value !== 'number' || value >= Number(wanted), `${at} is too small`),
  maximum: (wanted, value, at) =>
    says(typeof value !== 'number' || value <= Number(wanted), `${at} is too large`),
  exclusiveMinimum: (wanted, value, at) =>
    says(typeof value !== 'number' || value > Number(wanted), `${at} is too small`),
  exclusiveMaximum: (wanted, value, at) =>
    says(typeof value !== 'number' || value < Number(wanted), `${at} is too large`),
  minItems: (wanted, value, at) =>
    says(!Array.isArray(value) || value.length >= Number(wanted), `${at} has too few`),
  required: (wanted, value, at) =>
    isObject(value)
      ? (wanted as string[]).flatMap((name) =>
          says(Object.hasOwn(value, name), `${at}.${name} is missing`),
        )
      : [],
  properties: (wanted, value, at) =>
    isObject(value)
      ? Object.entries(wanted as Record<string, Schema>).flatMap(([name, schema]) =>
          Object.hasOwn(value, name) ? faultsOf(schema, value[name], `${at}.${name}`) : [],
        )
      : [],
  // Where it is a schema, it is for the members of a record by any name.
  additionalProperties: nothing,
  propertyNames: nothing,
  items: (wanted, value, at) =>
    Array.isArray(value)
      ? value.flatMap((item, index) => faultsOf(wanted as Schema, item, `${at}.${index}`))
      : [],
  anyOf: (wanted, value, at) =>
    says(
      (wanted as Schema[]).some((schema) => faultsOf(schema, value, at).length === 0),
      `${at} is none of them`,
    ),
  oneOf: (wanted, value, at) =>
    says(
      (wanted as Schema[]).filter((schema) => faultsOf(schema, value, at).length === 0).length ===
        1,
      `${at} is not exactly one of them`,
    ),
};

function typesOf(value: unknown): readonly string[] {
  if (value === null) return ['null'];
  if (Array.isArray(value)) return ['array'];
  return Number.isInteger(value) ? ['number', 'integer'] : [typeof value];
}

describe('a written file', () => {
  test('has the published shapes, member for member', async () => {
    const tablet = createTablet('tablet-a');
    const noor = { id: 'noor', roles: ['mechanic'] } as const;
    await tablet.storage.people.put({ ...noor, name: 'Noor', active: true });
    await tablet.perform('job-1', { kind: 'receive-box', bike: bikeFrom(mountainBike) }, noor);
    await tablet.perform('job-1', { kind: 'set-due', due: '2026-12-01T10:00' }, noor);
    const members = await membersOf(await tablet.write());
    const schema = (name: (typeof schemaNames)[number]) => JSON.parse(schemaOnDisk(name));
    for (const name of ['manifest', 'people', 'customers', 'shop'] as const)
      expect(faultsOf(schema(name), JSON.parse(textOf(members[`${name}.json`]))), name).toEqual([]);
    const [log = ''] = Object.keys(members).filter((path) => path.startsWith('logs/'));
    const entries = textOf(members[log])
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(entries).toHaveLength(2);
    for (const entry of entries) {
      expect(faultsOf(schema('entry'), entry)).toEqual([]);
      expect(faultsOf(schema('event'), entry.event)).toEqual([]);
    }
    expect(faultsOf(schema('entry'), { ...entries[0], seq: 'first' })).toEqual([
      '.seq is no integer',
    ]);
  });
});
