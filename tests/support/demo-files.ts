/** The demo shop's files, read as they are. */

import { readFileSync } from 'node:fs';

export function readDemo(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../seeds/demo/${name}`, import.meta.url), 'utf8'));
}
