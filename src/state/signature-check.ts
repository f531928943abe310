/** Whether each signature in a record was made by whom it names, over what it names. */

import { canonicalJson } from '../engine/integrity';
import type { JobState, SignatureMark } from '../engine/job';
import type { Storage } from '../storage/contract';
import { loadJob } from './load-job';
import type { Keys } from './ports';

export interface SignatureChecked {
  readonly entry: string;
  readonly meaning: SignatureMark['meaning'];
  readonly by: string;
  /** `signature-of-something-else`: well made, but over another record, other heads or another meaning. */
  readonly finding: 'good' | 'signature-wrong' | 'signature-of-something-else';
}

export async function checkSignatures(
  { storage, keys }: { readonly storage: Pick<Storage, 'log'>; readonly keys: Keys },
  job: string,
): Promise<readonly SignatureChecked[]> {
  const loaded = await loadJob(storage, job);
  if (loaded === undefined) return [];
  return Promise.all(loaded.state.signatures.map((mark) => checked(keys, job, loaded.state, mark)));
}

async function checked(
  keys: Keys,
  job: string,
  { bike }: JobState,
  mark: SignatureMark,
): Promise<SignatureChecked> {
  const { entry, meaning, by } = mark;
  const read = await keys.verify(mark.jws, by);
  if (!read.ok) return { entry, meaning, by, finding: 'signature-wrong' };
  const { name, customer, strokes, heads } = mark;
  const said = { job, frame: bike?.frameNumber, by, meaning, name, customer, strokes, heads };
  const isSaid = isSubset(said, read.value);
  return { entry, meaning, by, finding: isSaid ? 'good' : 'signature-of-something-else' };
}

/** Every member that the log claims stands in the signed payload with the same value. */
function isSubset(claimed: Readonly<Record<string, unknown>>, payload: unknown): boolean {
  if (typeof payload !== 'object' || payload === null) return false;
  const signed: Readonly<Record<string, unknown>> = { ...payload };
  return Object.entries(claimed).every(([name, value]) =>
    value === undefined
      ? signed[name] === undefined
      : signed[name] !== undefined && canonicalJson(signed[name]) === canonicalJson(value),
  );
}
