/** How a tool is changed: read, decided and kept in one transaction, with a note of who and when. */

import { ok, type Refusal, type Result, refuse } from '../engine/base';
import type { Storage, StorageRefusal, Tool, ToolNote } from '../storage/contract';
import type { Clock } from './ports';
import { attempted } from './storage-refusals';
import type { WrenchTool } from './tool-doubts';

export interface ToolPorts {
  readonly storage: Pick<Storage, 'tools' | 'findByWrench'>;
  readonly clock: Clock;
}

export type ToolMissing = { readonly code: 'tool-missing' };
export type ToolReasonMissing = { readonly code: 'reason-missing' };
export type DayNotYet = { readonly code: 'day-not-yet'; readonly on: string };
export type ToolRefusal = StorageRefusal | ToolMissing;

/** A refusal keeps nothing. */
export async function changed<R extends Refusal>(
  { tools }: Pick<Storage, 'tools'>,
  id: string,
  work: (held: Tool | undefined) => Result<Tool, R>,
): Promise<Result<true, R | StorageRefusal>> {
  let answer: Result<Tool, R> | undefined;
  const kept = await attempted(() =>
    tools.change(id, (held) => {
      answer = work(held);
      return answer.ok ? answer.value : undefined;
    }),
  );
  if (!kept.ok) return kept;
  return answer === undefined || answer.ok ? ok(true) : answer;
}

export function changedWrench<R extends Refusal>(
  storage: Pick<Storage, 'tools'>,
  id: string,
  work: (held: WrenchTool) => Result<Tool, R>,
): Promise<Result<true, R | ToolRefusal>> {
  return changed<R | ToolMissing>(storage, id, (held) =>
    held?.kind === 'wrench' ? work(held) : refuse({ code: 'tool-missing' }),
  );
}

/** Notes are only ever added. */
export function noted<T extends Tool>(tool: T, note: ToolNote): T {
  return { ...tool, history: [...(tool.history ?? []), note] };
}
