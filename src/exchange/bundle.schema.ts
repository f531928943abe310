/** A record file: one job or many, or a whole shop, as a ZIP whose members are named by their content. */

import * as z from 'zod/mini';
import { roles } from '../engine/job';
import { catalogueVersionSchema } from '../engine/plan';
import { figureSchema } from '../engine/torque';
import { keptToolSchema } from './kept-tool.schema';
import { personNoteSchema } from './person-note.schema';

export const bundleFormat = 'standbook-records';
export const bundleVersion = 1;

const id = z.string().check(z.minLength(1), z.maxLength(200));
const text = z.string().check(z.maxLength(10_000));
const digest = z.string().check(z.regex(/^[0-9a-f]{64}$/, 'a lower-case hex SHA-256'));
const count = z.int().check(z.minimum(0));

/** Pictures only: nothing that a browser would run. */
export const pictureTypes = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/svg+xml': 'svg',
} as const;
export type PictureType = keyof typeof pictureTypes;
const pictureTypeNames = Object.keys(pictureTypes) as PictureType[]; // the members of the object above

const pictureSchema = z.object({ digest, type: z.enum(pictureTypeNames) });

const proofSchema = z.object({ index: count, size: count, proof: z.array(digest) });

export const bundledRecordSchema = z.object({
  job: id,
  /** Where its log ends, sorted. */
  heads: z.array(digest).check(z.minLength(1)),
  entries: count,
  /** SHA-256 of `logs/<digest>.jsonl`. */
  log: digest,
  /** SHA-256 of `plans/<digest>.json`; absent while the bike is still boxed. */
  plan: z.optional(digest),
  /** Each in `pictures/<digest>.<ending>`. */
  pictures: z.array(pictureSchema),
  /** Proof that this record stood under the shop's digest. */
  proof: proofSchema,
});

export const manifestSchema = z.object({
  format: z.literal(bundleFormat),
  version: z.literal(bundleVersion),
  /** `records`: some jobs, to keep or to exchange; `shop`: a backup of everything. */
  scope: z.enum(['records', 'shop']),
  /** When it was written, as the device's clock claimed. */
  at: text,
  device: text,
  shop: z.object({ name: text, market: text, demo: z.boolean() }),
  /** Merkle root (RFC 9162) over all records of the shop at that time, and how many they were. */
  digest: z.object({ root: digest, count }),
  records: z.array(bundledRecordSchema),
  /** Every other member of the file, by its path. */
  others: z.array(z.object({ path: text, sha256: digest })),
});

export const peopleSchema = z.object({
  people: z.array(
    z.object({
      id,
      name: text,
      roles: z.array(z.enum(roles)),
      active: z.boolean(),
      history: z.exactOptional(z.array(personNoteSchema)),
    }),
  ),
  /** Public keys (JWK) by whose they are: `person:…` or `device`. They show who signed. */
  publicKeys: z.array(z.object({ id, keys: z.array(z.record(z.string(), z.unknown())) })),
});

export const customersSchema = z.object({
  customers: z.array(z.object({ digest, salt: text, name: text, contact: z.exactOptional(text) })),
  /** Digests of customers who asked to be forgotten: their rows are never taken in again. */
  erased: z.array(digest),
});

export const shopSchema = z.object({
  tools: z.array(keptToolSchema),
  figures: z.array(z.object({ id, make: text, model: text, joint: text, figure: figureSchema })),
  /** What the shop has changed in the catalogue; older backups say nothing of it. */
  catalogueVersions: z.exactOptional(z.array(catalogueVersionSchema)),
});

export type Manifest = z.infer<typeof manifestSchema>;
export type BundledRecord = z.infer<typeof bundledRecordSchema>;
export type BundledPeople = z.infer<typeof peopleSchema>;
export type BundledCustomers = z.infer<typeof customersSchema>;
export type BundledShop = z.infer<typeof shopSchema>;

/** The members whose names do not come from their content. */
export const memberPaths = {
  manifest: 'manifest.json',
  readme: 'README.txt',
  index: 'index.csv',
  people: 'people.json',
  customers: 'customers.json',
  shop: 'shop.json',
} as const;

export const logPath = (sha256: string) => `logs/${sha256}.jsonl`;
export const planPath = (sha256: string) => `plans/${sha256}.json`;
export const picturePath = ({ digest: sha256, type }: { digest: string; type: PictureType }) =>
  `pictures/${sha256}.${pictureTypes[type]}`;
