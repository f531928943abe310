/** A shop's changes to the catalogue as one JSON file: what stands where. */

import * as z from 'zod/mini';
import { catalogueVersionSchema } from '../engine/plan';

export const catalogueFileFormat = 'standbook-catalogue';
export const catalogueFileVersion = 1;

export const catalogueFileSchema = z.strictObject({
  /** Where the published schema of this file is found; nobody fetches it. */
  $schema: z.exactOptional(z.string().check(z.maxLength(200))),
  format: z.literal(catalogueFileFormat),
  version: z.literal(catalogueFileVersion),
  /** When it was written, as the device's clock claimed. */
  at: z.iso.datetime({ offset: true }),
  /** The shop that wrote it, and the catalogue its app was born with. */
  shop: z.string().check(z.maxLength(200)),
  catalogue: z.string().check(z.maxLength(80)),
  versions: z.array(catalogueVersionSchema).check(z.maxLength(1000)),
});

export type CatalogueFile = z.infer<typeof catalogueFileSchema>;
