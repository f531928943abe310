/** A finding that the bike goes out with: in a supervisor's name, by their own PIN, with a reason. */

import { ok, type Result } from '../engine/base';
import type { JobState } from '../engine/job';
import type { Perform, PerformRefusal } from './perform';
import type { AppPorts } from './ports';
import { provenSupervisor, type Supervised, type SupervisionRefusal } from './standing-for';

export interface AllowedFinding extends Supervised {
  readonly job: string;
  readonly finding: string;
  readonly reason: string;
}

export type AllowRefusal = PerformRefusal | SupervisionRefusal;

export async function allowFinding(
  ports: Pick<AppPorts, 'storage' | 'keys'> & { readonly perform: Perform },
  { job, finding, reason, ...by }: AllowedFinding,
): Promise<Result<JobState, AllowRefusal>> {
  const supervisor = await provenSupervisor(ports, by);
  if (!supervisor.ok) return supervisor;
  const asked = { kind: 'allow-finding', finding, reason } as const;
  const done = await ports.perform(job, asked, supervisor.value);
  return done.ok ? ok(done.value.state) : done;
}
