/** Jobs played through the real decisions: given what happened, when somebody asks, then events or a refusal. */

import { type Entry, headsOf, logEnd, nextPlace, seal } from '../../src/engine/integrity';
import {
  type Asked,
  type Command,
  decide,
  emptyJob,
  evolve,
  type JobEvent,
  type JobPlan,
  type JobRefusal,
  type JobState,
  type Meaning,
  replay,
  type Signing,
  type Stamp,
  withPlan,
} from '../../src/engine/job';
import { TODAY } from './wrenches';

export interface Played {
  readonly plan: JobPlan;
  readonly entries: readonly Entry[];
  readonly state: JobState;
}

export type Who = Pick<Stamp, 'by' | 'roles'>;

export const imre: Who = { by: 'imre', roles: ['mechanic'] };
export const petra: Who = { by: 'petra', roles: ['mechanic'] };
export const ines: Who = { by: 'ines', roles: ['apprentice'] };
export const sunniva: Who = { by: 'sunniva', roles: ['supervisor'] };

const at = { claimed: `${TODAY}T10:00:00+01:00`, zone: 'Europe/Berlin' };

export function nothingYet(plan: JobPlan): Played {
  return { plan, entries: [], state: emptyJob() };
}

export function boxed(plan: JobPlan): Played {
  return doing(nothingYet(plan), { kind: 'receive-box', bike: plan.bike });
}

export function opened(plan: JobPlan): Played {
  return doing(boxed(plan), { kind: 'open-job', plan });
}

export function commandOf({ entries }: Played, asked: Asked, who: Who = imre): Command {
  return { ...asked, stamp: { ...who, at, on: TODAY, heads: headsOf(entries) } };
}

/** What the decision says, with nothing written down. */
export function asking(played: Played, asked: Asked, who: Who = imre) {
  return decide(commandOf(played, asked, who), played.state);
}

/** The job after it was done; throws when it was refused. */
export function doing(played: Played, asked: Asked, who: Who = imre, device = 'tablet-a'): Played {
  const decided = asking(played, asked, who);
  if (!decided.ok) throw new Error(`${asked.kind} refused: ${JSON.stringify(decided.refusal)}`);
  const plan = asked.kind === 'open-job' ? asked.plan : played.plan;
  return decided.value.reduce((now: Played, event) => logged(now, event, who, device), {
    ...played,
    plan,
    state: asked.kind === 'open-job' ? withPlan(played.state, plan) : played.state,
  });
}

export function eventsOf(played: Played, asked: Asked, who: Who = imre): readonly JobEvent[] {
  const decided = asking(played, asked, who);
  if (!decided.ok) throw new Error(`${asked.kind} refused: ${JSON.stringify(decided.refusal)}`);
  return decided.value;
}

export function refusalOf(played: Played, asked: Asked, who: Who = imre): JobRefusal {
  const decided = asking(played, asked, who);
  if (decided.ok) throw new Error(`${asked.kind} was not refused`);
  return decided.refusal;
}

/** One more entry, whatever its event. */
export function logged(
  played: Played,
  event: Entry['event'],
  { by }: Pick<Who, 'by'> = imre,
  device = 'tablet-a',
): Played {
  const place = nextPlace(logEnd(played.entries, device));
  const entry = seal({ v: 1, job: 'job-1', device, ...place, at, by, event });
  return { ...played, entries: [...played.entries, entry], state: evolve(played.state, entry) };
}

/** Two tablets that went on apart from the same log have met again. */
export function met(one: Played, other: Played): Played {
  const entries = [...new Set([...one.entries, ...other.entries])];
  return { plan: one.plan, entries, state: replay(entries, one.plan) };
}

export const customer = 'c'.repeat(64);

export function signing(played: Played, meaning: Meaning, own: Partial<Signing> = {}): Signing {
  const who = meaning === 'received' ? { customer } : { name: 'A name' };
  return { meaning, ...who, heads: headsOf(played.entries), jws: 'a.b.c', ...own };
}
