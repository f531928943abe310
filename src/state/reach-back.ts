/** Reach-back: which bikes carry joints that a wrench in doubt may have left outside, and that they were called back. */

import { ok, type Result, refuse } from '../engine/base';
import { type JobStatus, replay, type WrenchUse, wrenchUses } from '../engine/job';
import {
  type Adapter,
  type ReachBackRefusal,
  type ReachedJoint,
  reachBack,
} from '../engine/torque';
import { millimetres, type NewtonMetres, newtonMetres } from '../engine/units';
import type {
  Customer,
  JobRow,
  Person,
  Storage,
  StorageRefusal,
  ToolNote,
} from '../storage/contract';
import { loadJob } from './load-job';
import type { Perform, PerformRefusal } from './perform';
import type { Clock } from './ports';
import { attempted } from './storage-refusals';
import { changedWrench, noted, type ToolMissing } from './tool-changes';
import { calledBackFor, type Doubt, isInDoubt, type WrenchTool } from './tool-doubts';

export interface ReachBackPorts {
  readonly storage: Pick<Storage, 'findByWrench' | 'log' | 'customers' | 'tools'>;
}

export type CalledBack = Extract<ToolNote, { readonly kind: 'called-back' }>;

type Judged = Omit<WrenchUse, 'setPoint' | 'adapter'> & {
  readonly job: string;
  readonly frameNumber: string;
  readonly handedOver: boolean;
  readonly on: string;
  readonly setPoint: NewtonMetres;
  readonly adapter?: (Adapter & { readonly id: string; readonly name: string }) | undefined;
};

/** A joint with everything the list shows of it. */
export type JointInDoubt = ReachedJoint<Judged>;

export interface BikeInDoubt {
  readonly job: string;
  readonly make: string;
  readonly model: string;
  readonly frameNumber: string;
  readonly status: JobStatus;
  readonly handedOverAt?: string | undefined;
  /** From the shop's list of customers; the record never held them. */
  readonly customer?: Pick<Customer, 'name' | 'contact'> | undefined;
  readonly joints: readonly JointInDoubt[];
  readonly calledBack: readonly CalledBack[];
}

export interface ReachedBack {
  /** The most urgent first. */
  readonly bikes: readonly BikeInDoubt[];
  /** How many bikes and joints were judged again. */
  readonly looked: { readonly bikes: number; readonly joints: number };
}

interface Looked {
  readonly row: JobRow;
  readonly customer?: Customer | undefined;
  readonly uses: readonly Judged[];
}

/** Reads only jobs on which the wrench was used in that time. `onProgress` is told how many of them are done. */
export async function reachBackFor(
  { storage }: ReachBackPorts,
  tool: WrenchTool,
  doubt: Doubt,
  onProgress: (done: number, of: number) => void = () => undefined,
): Promise<Result<ReachedBack, StorageRefusal | ReachBackRefusal>> {
  const { since, until, found } = doubt;
  const days = { since: since.on, until: until?.on };
  const read = await attempted(async () => {
    const rows = await storage.findByWrench(tool.id, days);
    const looked: Looked[] = [];
    for (const row of rows) {
      looked.push(await lookAt(storage, row, tool.id, doubt));
      onProgress(looked.length, rows.length);
    }
    return looked;
  });
  if (!read.ok) return read;
  const uses = read.value.flatMap((looked) => looked.uses);
  const reached = reachBack<Judged>({ wrench: tool.wrench, found, ...days, uses });
  if (!reached.ok) return reached;
  const calledBack = calledBackFor(tool, doubt);
  return ok({
    bikes: bikesIn(read.value, worstOfEach(reached.value), calledBack),
    looked: {
      bikes: read.value.filter((looked) => looked.uses.length > 0).length,
      joints: new Set(uses.map(({ job, joint }) => `${job} ${joint}`)).size,
    },
  });
}

async function lookAt(
  storage: Pick<Storage, 'log' | 'customers'>,
  row: JobRow,
  wrench: string,
  doubt: Doubt,
): Promise<Looked> {
  const { entries, plan } = await storage.log(row.job);
  const byJoint = new Map(
    wrenchUses(entries, plan, wrench)
      .filter(({ at }) => isInDoubt(doubt, at.claimed))
      .map((use) => [use.joint, use]), // of the same joint the last counts
  );
  const digest =
    row.status === 'handed-over' ? replay(entries, plan).handedOver?.customer : undefined;
  const customer = digest === undefined ? undefined : await storage.customers.get(digest);
  return { row, customer, uses: [...byJoint.values()].flatMap((use) => judgedUses(row, use)) };
}

/** What the wrench showed at each bolt, where it was read; otherwise the one setting at which every bolt clicked. */
function judgedUses({ job, frameNumber, status }: JobRow, use: WrenchUse): readonly Judged[] {
  const { adapter, readings = [] } = use;
  const shown = readings.length === 0 ? [use.setPoint] : readings.map(({ value }) => value);
  return [...new Set(shown)].map((setPoint) => ({
    ...use,
    adapter: adapter && {
      ...adapter,
      grip: millimetres(adapter.grip),
      offset: millimetres(adapter.offset),
    },
    job,
    frameNumber,
    handedOver: status === 'handed-over',
    on: use.at.claimed.slice(0, 10),
    setPoint: newtonMetres(setPoint),
  }));
}

/** Of a joint whose bolts were read one by one, the likeliest to be outside: it comes first. */
function worstOfEach(reached: readonly JointInDoubt[]): readonly JointInDoubt[] {
  const seen = new Set<string>();
  return reached.filter(({ job, joint }) => {
    const key = `${job} ${joint}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** In the order of their most urgent joint. */
function bikesIn(
  looked: readonly Looked[],
  reached: readonly JointInDoubt[],
  calledBack: readonly CalledBack[],
): readonly BikeInDoubt[] {
  return [...new Set(reached.map(({ job }) => job))].flatMap((job) => {
    const found = looked.find(({ row }) => row.job === job);
    if (found === undefined) return [];
    const { make, model, frameNumber, status, handedOverAt } = found.row;
    const { customer } = found;
    return {
      job,
      make,
      model,
      frameNumber,
      status,
      handedOverAt,
      ...(customer && { customer: { name: customer.name, ...contactOf(customer) } }),
      joints: reached.filter((joint) => joint.job === job),
      calledBack: calledBack.filter((note) => note.job === job),
    };
  });
}

function contactOf({ contact }: Customer): Pick<Customer, 'contact'> {
  return contact === undefined ? {} : { contact };
}

export interface CallBack {
  readonly wrench: string;
  readonly doubt: string;
  readonly job: string;
  readonly joints: readonly { readonly joint: string; readonly step?: string | undefined }[];
  /** What is written into the record, or why the steps are reopened. */
  readonly text: string;
}

export type CallBackRefusal = PerformRefusal | ToolMissing;

/** A bike that has gone home gets it noted in its record; one that has not gets the steps of its joints reopened. */
export async function callBack(
  {
    storage,
    clock,
    perform,
  }: {
    readonly storage: Pick<Storage, 'tools' | 'log'>;
    readonly clock: Clock;
    readonly perform: Perform;
  },
  { wrench, doubt, job, joints, text }: CallBack,
  person: Person,
): Promise<Result<true, CallBackRefusal>> {
  const read = await attempted(() => loadJob(storage, job));
  if (!read.ok) return read;
  const state = read.value?.state;
  const isGone = state?.handedOver !== undefined;
  // Said once already, when only the note on the board was lost.
  const isSaid = isGone && state.amendments.some((mark) => mark.text === text.trim());
  const steps = joints.flatMap(({ step }) => step ?? []);
  const asked = isGone
    ? isSaid
      ? []
      : [{ kind: 'amend-record', text } as const]
    : steps.map((step) => ({ kind: 'reopen-step', step, reason: text }) as const);
  for (const one of asked) {
    const done = await perform(job, one, person);
    // A step that is open again already has been called back.
    if (!done.ok && done.refusal.code !== 'step-not-done') return refuse(done.refusal);
  }
  const how = isGone ? 'record-amended' : 'steps-reopened';
  const names = joints.map(({ joint }) => joint);
  const note = { kind: 'called-back', doubt, job, joints: names, how, text: text.trim() } as const;
  return changedWrench(storage, wrench, (held) =>
    ok(noted(held, { ...note, by: person.id, at: clock.now() })),
  );
}
