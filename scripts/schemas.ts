/** `npm run schemas`: writes the published shapes of record files anew; a test fails while they are not what the app reads. */

import { schemaNames, writeSchemas } from './record-file-schemas';

writeSchemas();
console.log(`${schemaNames.length} schemas in docs/record-file`);
