/** The one way a job changes on the disk: read, decide and keep in one transaction. */

import { ok, type Refusal, type Result } from '../../engine/base';
import type { HeldJob, JobWrite, StorageRefusal } from '../contract';
import { committed } from './committed';
import type { Connection } from './connection';
import { heldJob, jobTables, putJob } from './job-writes';

export async function changeJob<W extends JobWrite, R extends Refusal>(
  { database, attempt }: Connection,
  job: string,
  seen: readonly string[] | undefined,
  work: (held: HeldJob) => Result<W, R>,
): Promise<Result<W, R | StorageRefusal>> {
  let begun: W | undefined;
  let thrown: { readonly error: unknown } | undefined;

  function decided(held: HeldJob): Result<W, R> {
    try {
      return work(held);
    } catch (error) {
      thrown = { error };
      throw error;
    }
  }

  const kept = await attempt(() =>
    committed(database, jobTables(database), async () => {
      // The connection may have been lost after the commit and before we heard of it: then all is done.
      const last = begun?.entries.at(-1);
      if (begun && last && (await database.entries.get(last.id)) !== undefined) return ok(begun);

      const answer = decided(await heldJob(database, job, seen));
      if (!answer.ok) return answer;
      begun = answer.value;
      await putJob(database, begun, false);
      return answer;
    }),
  );
  if (thrown !== undefined) throw thrown.error;
  return kept.ok ? kept.value : kept;
}
