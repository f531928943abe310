/** The tool board as it stands now: what was entered of each wrench, and what the app has counted since. */

import type { JobRow, Tool } from '../storage/contract';
import type { RowsStore } from './rows-store';

/** How often a wrench was used from a day on, and on that day alone. */
export interface Counted {
  readonly since: number;
  readonly onTheDay: number;
}

export function operationsCounted(
  rows: readonly Pick<JobRow, 'wrenchDays'>[],
  wrench: string,
  day: string,
): Counted {
  let since = 0;
  let onTheDay = 0;
  for (const { wrenchDays } of rows) {
    for (const [id, on, operations] of wrenchDays) {
      if (id !== wrench || on < day) continue;
      since += operations;
      if (on === day) onTheDay += operations;
    }
  }
  return { since, onTheDay };
}

/**
 * Operations since the last calibration: those entered with it and those counted since. What was counted on its own day
 * before it was entered does not count; `countedBefore` remembers how many that were.
 */
export function withCountedOperations(
  tools: readonly Tool[],
  rows: readonly Pick<JobRow, 'wrenchDays'>[],
): readonly Tool[] {
  return tools.map((tool) => {
    if (tool.kind !== 'wrench') return tool;
    const { wrench, countedBefore = 0 } = tool;
    const { since } = operationsCounted(rows, wrench.id, wrench.calibratedOn);
    const operations = (wrench.operations ?? 0) + Math.max(0, since - countedBefore);
    return { ...tool, wrench: { ...wrench, operations } };
  });
}

/** Tells of the tools whenever they or what was counted of them changes, and of nothing else the rack does. */
export function watchCountedTools(
  watch: (onRows: (rows: readonly Tool[]) => void) => () => void,
  rack: RowsStore<JobRow>,
): (onRows: (rows: readonly Tool[]) => void) => () => void {
  return (onRows) => {
    let tools: readonly Tool[] | undefined;
    let told = '';
    const tell = () => {
      const { loaded, rows } = rack.getState();
      if (tools === undefined || !loaded) return;
      const counted = withCountedOperations(tools, rows);
      const now = JSON.stringify(counted);
      if (now === told) return;
      told = now;
      onRows(counted);
    };
    const stopTools = watch((rows) => {
      tools = rows;
      told = '';
      tell();
    });
    const stopRack = rack.subscribe(tell);
    return () => {
      stopTools();
      stopRack();
    };
  };
}
