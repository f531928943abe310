/** The tool board: tools come, change, are dropped, go away and retire; every note of it is kept. */

import { compareText, ok, type Result, refuse } from '../engine/base';
import type { Wrench, WrenchCondition } from '../engine/torque';
import type { Person, StorageRefusal, Tool } from '../storage/contract';
import {
  changed,
  changedWrench,
  type DayNotYet,
  noted,
  type ToolPorts,
  type ToolReasonMissing,
  type ToolRefusal,
} from './tool-changes';
import { needsCalibration } from './tool-doubts';

export type ToolNameTaken = { readonly code: 'tool-name-taken'; readonly name: string };
export type WrenchNeedsCalibration = {
  readonly code: 'wrench-needs-calibration';
  readonly wrench: string;
};
export type ConditionRefusal = ToolRefusal | ToolReasonMissing | DayNotYet | WrenchNeedsCalibration;
export type NewAdapter = Omit<Extract<Tool, { readonly kind: 'adapter' }>, 'history' | 'retired'>;
export type NewTool = { readonly kind: 'wrench'; readonly wrench: Wrench } | NewAdapter;

/** What may be corrected without a calibration: what the tool is. */
export type WrenchDescription = Pick<
  Wrench,
  'name' | 'type' | 'class' | 'lowest' | 'highest' | 'increment' | 'unit'
> & { readonly kind?: Wrench['kind'] };

export interface ConditionChange {
  readonly wrench: string;
  readonly to: WrenchCondition;
  /** The ISO date on which it happened. */
  readonly on: string;
  readonly reason: string;
}

/** A name on the board is never used twice: records know a wrench by it. */
export function addTool(
  { storage, clock }: ToolPorts,
  tool: NewTool,
  person: Person,
): Promise<Result<true, StorageRefusal | ToolNameTaken>> {
  const id = tool.kind === 'wrench' ? tool.wrench.id : tool.id;
  const history = [{ kind: 'added', by: person.id, at: clock.now() } as const];
  return changed(storage, id, (held) => {
    if (held !== undefined) return refuse({ code: 'tool-name-taken', name: id });
    return ok(tool.kind === 'wrench' ? { id, ...tool, history } : { ...tool, history });
  });
}

export function describeWrench(
  { storage, clock }: ToolPorts,
  id: string,
  { kind, ...description }: WrenchDescription,
  person: Person,
): Promise<Result<true, ToolRefusal>> {
  return changedWrench(storage, id, (held) => {
    const { kind: _, ...rest } = held.wrench;
    const wrench = { ...rest, ...description, ...(kind && { kind }) };
    return ok(noted({ ...held, wrench }, { kind: 'changed', by: person.id, at: clock.now() }));
  });
}

export function describeAdapter(
  { storage, clock }: ToolPorts,
  { id, name, adapter, wrench }: NewAdapter,
  person: Person,
): Promise<Result<true, ToolRefusal>> {
  return changed(storage, id, (held) => {
    if (held?.kind !== 'adapter') return refuse({ code: 'tool-missing' });
    const { wrench: _, ...rest } = held;
    const next = { ...rest, name, adapter, ...(wrench !== undefined && { wrench }) };
    return ok(noted(next, { kind: 'changed', by: person.id, at: clock.now() }));
  });
}

/** An adapter goes from the board and comes back; what it was used for stays in the records. */
export function retireAdapter(
  { storage, clock }: ToolPorts,
  id: string,
  isRetired: boolean,
  person: Person,
): Promise<Result<true, ToolRefusal>> {
  return changed(storage, id, (held) => {
    if (held?.kind !== 'adapter') return refuse({ code: 'tool-missing' });
    const now = { by: person.id, at: clock.now(), on: clock.today(), reason: '' };
    const [from, to] = isRetired
      ? (['in service', 'retired'] as const)
      : (['retired', 'in service'] as const);
    return ok(noted({ ...held, retired: isRetired }, { kind: 'condition', from, to, ...now }));
  });
}

/** Back into service only when nothing has happened to it that a calibration must answer first. */
export function changeCondition(
  { storage, clock }: ToolPorts,
  { wrench: id, to, on, reason }: ConditionChange,
  person: Person,
): Promise<Result<true, ConditionRefusal>> {
  return changedWrench(storage, id, (held): Result<Tool, ConditionRefusal> => {
    if (reason.trim() === '') return refuse({ code: 'reason-missing' });
    if (compareText(on, clock.today()) > 0) return refuse({ code: 'day-not-yet', on });
    if (to === 'in service' && needsCalibration(held))
      return refuse({ code: 'wrench-needs-calibration', wrench: id });
    const from = held.wrench.condition;
    const note = { from, to, on, reason: reason.trim(), by: person.id, at: clock.now() };
    const wrench = { ...held.wrench, condition: to };
    return ok(noted({ ...held, wrench }, { kind: 'condition', ...note }));
  });
}
