/** The golden records, as something to measure on. */

import { readFileSync } from 'node:fs';
import type { GoldenName, GoldenRecord } from '../golden/record';

export function readGolden(name: GoldenName): GoldenRecord {
  return JSON.parse(readFileSync(new URL(`../golden/${name}.json`, import.meta.url), 'utf8'));
}
