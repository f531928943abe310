/** What is published is what the app checks with; and a file it writes answers to it. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { publishedSchemas } from '../../scripts/published-schemas';
import { catalogueVersionSchema } from '../../src/engine/plan';
import { writeCatalogueFile } from '../../src/exchange/catalogue-file';
import { versionOf } from '../support/shop-versions';

const published = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../docs/schemas/${name}`, import.meta.url), 'utf8'));

const names = ['catalogue-changes.schema.json', 'catalogue.schema.json'];

test('every schema stands in docs/schemas as the app has it today (scripts/schemas.ts writes them)', () => {
  const today = publishedSchemas();
  expect(Object.keys(today)).toEqual(names);
  for (const name of names)
    expect(published(name)).toEqual(JSON.parse(JSON.stringify(today[name])));
});

test('a file says which schema it answers to, and has the members the schema requires', () => {
  const file = JSON.parse(
    writeCatalogueFile({
      versions: [versionOf(1, [{ kind: 'switch-off', step: 'papers' }])],
      catalogue: '1.0',
      shop: 'Saltmarsh Row Bicycles',
      at: '2026-11-25T15:00:00+00:00',
    }),
  );
  expect(names).toContain(file.$schema);
  const schema = published(file.$schema);
  expect(schema.required.every((member: string) => member in file)).toBe(true);
  expect(Object.keys(file).every((member) => member in schema.properties)).toBe(true);
  expect(schema.properties.format.const).toBe(file.format);
});

test('each kind of change is in the schema', () => {
  const text = JSON.stringify(published('catalogue-changes.schema.json'));
  for (const option of catalogueVersionSchema.shape.changes.def.element.def.options) {
    const kind = [...option.shape.kind.def.values][0];
    expect(text).toContain(`"const":"${kind}"`);
  }
});
