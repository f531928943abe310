/** Writes golden records to disk: those that are not there yet, or all of them anew. */

import { existsSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { playRecord } from './play-record';
import { goldenNames } from './record';

/** Answers one line for each record, saying what became of it. */
export async function writeRecords({ replace }: { readonly replace: boolean }): Promise<string[]> {
  const lines: string[] = [];
  for (const name of goldenNames) {
    const path = fileURLToPath(new URL(`./${name}.json`, import.meta.url));
    if (existsSync(path) && !replace) {
      lines.push(`${name} stays as it is: what a release has written is a promise`);
      continue;
    }
    const { entries, plan, ...told } = await playRecord(name);
    writeFileSync(path, `${jsonByLine({ ...told, plan, entries })}\n`);
    lines.push(`${name} is written: ${entries.length} entries, head ${told.heads.join(' ')}`);
  }
  return lines;
}

/** One member to a line, and one entry of a list to a line, so that a difference can be read. */
function jsonByLine(record: Readonly<Record<string, unknown>>): string {
  const members = Object.entries(record).map(([name, value]) => {
    const text = Array.isArray(value)
      ? `[\n${value.map((row) => JSON.stringify(row)).join(',\n')}\n]`
      : JSON.stringify(value);
    return `${JSON.stringify(name)}: ${text}`;
  });
  return `{\n${members.join(',\n')}\n}`;
}
