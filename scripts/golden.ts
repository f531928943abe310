/** `npm run golden`: writes the golden records that are not there yet; `--replace` writes all of them anew. */

import { fileURLToPath } from 'node:url';

// Named in a way that the compiler does not follow: it plays the app, and the tests' project knows the browser's types.
const writer = fileURLToPath(new URL('../tests/golden/write-records.ts', import.meta.url));
const { writeRecords } = await import(writer);

for (const line of await writeRecords({ replace: process.argv.includes('--replace') })) {
  console.log(line);
}
