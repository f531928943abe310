/** Whether each signature in a record was made by whom it names, over what it names. */

import type { Result } from '../engine/base';
import { canonicalJson, type SignatureFinding } from '../engine/integrity';
import type { JobState, SignatureMark } from '../engine/job';
import type { Storage } from '../storage/contract';
import { loadJob } from './load-job';
import type { Keys, SignatureWrong } from './ports';

export interface SignatureChecked {
  readonly entry: string;
  readonly meaning: SignatureMark['meaning'];
  readonly by: string;
  readonly name?: string | undefined;
  /**
   * `good-by-its-file`: made with the key that came with the file, which this tablet has not seen before;
   * `signature-of-something-else`: well made, but over another record, other heads or another meaning.
   */
  readonly finding:
    | 'good'
    | 'good-by-its-file'
    | 'signer-unknown'
    | 'signature-wrong'
    | 'signature-of-something-else';
}

/** The payload when the signature holds, and whether by a key that is known here or one that came with the file. */
export type Verifies = (
  jws: string,
  by: string,
) => Promise<Result<unknown, SignatureWrong> & { readonly by?: 'here' | 'file' }>;

export async function checkSignatures(
  {
    storage,
    keys,
  }: { readonly storage: Pick<Storage, 'log'>; readonly keys: Pick<Keys, 'verify'> },
  job: string,
): Promise<readonly SignatureChecked[]> {
  const loaded = await loadJob(storage, job);
  if (loaded === undefined) return [];
  return checkSignaturesIn(job, loaded.state, keys.verify);
}

export function checkSignaturesIn(
  job: string,
  state: JobState,
  verifies: Verifies,
): Promise<readonly SignatureChecked[]> {
  return Promise.all(state.signatures.map((mark) => checked(verifies, job, state, mark)));
}

/**
 * What the verifier of logs is told: a signature that does not hold is damage, whatever else it may be good for. One
 * whose signer is not known here is none: it could not be checked, and that is told beside.
 */
export function wrongSignatures(
  checks: readonly SignatureChecked[],
): ReadonlyMap<string, SignatureFinding> {
  const wrong = checks.filter(
    ({ finding }) => finding === 'signature-wrong' || finding === 'signature-of-something-else',
  );
  return new Map(wrong.map(({ entry }) => [entry, 'signature-wrong']));
}

async function checked(
  verifies: Verifies,
  job: string,
  { bike }: JobState,
  mark: SignatureMark,
): Promise<SignatureChecked> {
  const { entry, meaning, by, name } = mark;
  const read = await verifies(mark.jws, by);
  if (!read.ok) return { entry, meaning, by, name, finding: read.refusal.code };
  const { customer, strokes, heads } = mark;
  const said = { job, frame: bike?.frameNumber, by, meaning, name, customer, strokes, heads };
  if (!isSubset(said, read.value))
    return { entry, meaning, by, name, finding: 'signature-of-something-else' };
  return { entry, meaning, by, name, finding: read.by === 'file' ? 'good-by-its-file' : 'good' };
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
