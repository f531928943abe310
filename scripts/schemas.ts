/** `npm run schemas`: writes the published shapes of files anew, from the schemas the app itself checks with; a test fails while they differ. */

import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { publishedSchemas } from './published-schemas';
import { schemaNames, writeSchemas } from './record-file-schemas';

writeSchemas();
console.log(`${schemaNames.length} schemas in docs/record-file`);

mkdirSync('docs/schemas', { recursive: true });
for (const [name, schema] of Object.entries(publishedSchemas())) {
  const file = `docs/schemas/${name}`;
  writeFileSync(file, JSON.stringify(schema));
  execFileSync('npx', ['biome', 'format', '--write', file]);
  console.log(file);
}
