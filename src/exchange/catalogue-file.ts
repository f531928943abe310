/** Writes and reads a file of catalogue changes; what comes in is refused whole unless every part of it is as published. */

import { ok, type Result, refuse } from '../engine/base';
import type { CatalogueVersion } from '../engine/plan';
import {
  type CatalogueFile,
  catalogueFileFormat,
  catalogueFileSchema,
  catalogueFileVersion,
} from './catalogue-file.schema';

/** Characters: a thousand versions; a shop writes a few a month. */
const longestFile = 2_000_000;
/** No honest condition is nested deeper; a parser that calls itself would run out of stack. */
const deepestNesting = 40;

export function writeCatalogueFile({
  versions,
  catalogue,
  shop,
  at,
}: Pick<CatalogueFile, 'catalogue' | 'shop' | 'at'> & {
  readonly versions: readonly CatalogueVersion[];
}): string {
  const file = {
    $schema: 'catalogue-changes.schema.json',
    format: catalogueFileFormat,
    version: catalogueFileVersion,
    at,
    shop,
    catalogue,
    versions: [...versions],
  } satisfies CatalogueFile;
  return `${JSON.stringify(file, null, 1)}\n`;
}

export function readCatalogueFile(
  text: string,
): Result<readonly CatalogueVersion[], CatalogueFileRefusal> {
  if (text.length > longestFile)
    return refuse({ code: 'catalogue-file-too-large', limit: longestFile });
  if (isDeep(text)) return refuse({ code: 'catalogue-file-malformed', place: '' });
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return refuse({ code: 'catalogue-file-not-readable' });
  }
  if (typeof given !== 'object' || given === null || !('format' in given && 'version' in given))
    return refuse({ code: 'catalogue-file-not-readable' });
  const { format, version } = given;
  if (format !== catalogueFileFormat || typeof version !== 'number')
    return refuse({ code: 'catalogue-file-not-readable' });
  if (version !== catalogueFileVersion)
    return refuse({ code: 'catalogue-file-of-another-version', version });
  const file = catalogueFileSchema.safeParse(given);
  if (file.success) return ok(file.data.versions);
  const path = file.error.issues[0]?.path ?? [];
  return refuse({ code: 'catalogue-file-malformed', place: path.join('.') });
}

export type CatalogueFileRefusal =
  | { readonly code: 'catalogue-file-too-large'; readonly limit: number }
  | { readonly code: 'catalogue-file-not-readable' }
  | { readonly code: 'catalogue-file-of-another-version'; readonly version: number }
  | { readonly code: 'catalogue-file-malformed'; readonly place: string };

/** Counted over the text itself, before anything is built from it; brackets inside strings do not count. */
function isDeep(text: string): boolean {
  let depth = 0;
  let isInString = false;
  for (let at = 0; at < text.length && depth <= deepestNesting; at += 1) {
    const character = text[at];
    if (isInString && character === '\\') at += 1;
    else if (character === '"') isInString = !isInString;
    else if (isInString) continue;
    else if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth -= 1;
  }
  return depth > deepestNesting;
}
