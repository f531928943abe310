/** The tool board as it stands now: what was entered of each wrench, and what the app has counted since. */

import type { JobRow, Tool } from '../storage/contract';
import type { RowsStore } from './rows-store';

type CountedRow = Pick<JobRow, 'wrenchDays'>;

/** How often a wrench was used from a day on, and on that day alone. */
export interface Counted {
  readonly since: number;
  readonly onTheDay: number;
}

export function operationsCounted(
  rows: readonly CountedRow[],
  wrench: string,
  day: string,
): Counted {
  let since = 0;
  let onTheDay = 0;
  for (const [id, on, operations] of rows.flatMap(({ wrenchDays }) => wrenchDays)) {
    if (id !== wrench || on < day) continue;
    since += operations;
    if (on === day) onTheDay += operations;
  }
  return { since, onTheDay };
}

/**
 * Operations since the last calibration: those entered with it and those counted since. What was counted on its own day
 * before it was entered does not count; `countedBefore` remembers how many that were.
 */
export function withCountedOperations(
  tools: readonly Tool[],
  rows: readonly CountedRow[],
): readonly Tool[] {
  const since = countedSince(tools, rows);
  return tools.map((tool) => {
    if (tool.kind !== 'wrench') return tool;
    const { wrench, countedBefore = 0 } = tool;
    const counted = Math.max(0, (since.get(wrench.id) ?? 0) - countedBefore);
    return { ...tool, wrench: { ...wrench, operations: (wrench.operations ?? 0) + counted } };
  });
}

/** By wrench, from the day of its calibration on; once through the rows, because this follows every tap. */
function countedSince(
  tools: readonly Tool[],
  rows: readonly CountedRow[],
): ReadonlyMap<string, number> {
  const days = new Map(
    tools.flatMap((tool) =>
      tool.kind === 'wrench' ? [[tool.wrench.id, tool.wrench.calibratedOn] as const] : [],
    ),
  );
  const counts = new Map<string, number>();
  for (const { wrenchDays } of rows) {
    for (const [id, on, operations] of wrenchDays) {
      const day = days.get(id);
      if (day !== undefined && on >= day) counts.set(id, (counts.get(id) ?? 0) + operations);
    }
  }
  return counts;
}

/** Tells of the tools whenever they or what was counted of them changes, and of nothing else the rack does. */
export function watchCountedTools(
  watch: (onRows: (rows: readonly Tool[]) => void) => () => void,
  rack: RowsStore<JobRow>,
): (onRows: (rows: readonly Tool[]) => void) => () => void {
  return (onRows) => {
    let tools: readonly Tool[] | undefined;
    let told: string | undefined;
    const tell = () => {
      const { loaded, rows } = rack.getState();
      if (tools === undefined || !loaded) return;
      const counted = withCountedOperations(tools, rows);
      const now = counted.map((tool) => tool.kind === 'wrench' && tool.wrench.operations).join();
      if (now === told) return;
      told = now;
      onRows(counted);
    };
    const stopTools = watch((rows) => {
      tools = rows;
      told = undefined;
      tell();
    });
    const stopRack = rack.subscribe(tell);
    return () => {
      stopTools();
      stopRack();
    };
  };
}
