/** Writes the published JSON Schemas from the schemas that the app itself checks with: `node scripts/run-typescript.mjs scripts/schemas.ts`. */

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { publishedSchemas } from './published-schemas';

for (const [name, schema] of Object.entries(publishedSchemas())) {
  const file = `docs/schemas/${name}`;
  writeFileSync(file, JSON.stringify(schema));
  execFileSync('npx', ['biome', 'format', '--write', file]);
  console.log(file);
}
