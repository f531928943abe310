/** The demo shop's tool board: dates count from the first start, and what happened to a wrench stands in its history. */

import { compareText } from '../engine/base';
import type { Wrench } from '../engine/torque';
import type { Tool, ToolNote } from '../storage/contract';
import { daysAfter } from './calendar-days';
import { createDemoClock } from './demo-clock';
import type { DemoNote, DemoSeeds } from './demo-seeds';
import type { Clock } from './ports';

export function demoTools({ wrenches, adapters }: DemoSeeds, clock: Clock): readonly Tool[] {
  const today = clock.today();
  const board = wrenches.map(({ calibratedDaysAgo, dueInDays, notes = [], ...rest }): Tool => {
    const wrench: Wrench = {
      ...rest,
      calibratedOn: daysAfter(today, -calibratedDaysAgo),
      dueOn: daysAfter(today, dueInDays),
    };
    return { id: wrench.id, kind: 'wrench', wrench, history: historyOf(notes, clock) };
  });
  const beside = adapters.map(
    ({ id, name, wrench, ...adapter }): Tool => ({ id, kind: 'adapter', name, wrench, adapter }),
  );
  return [...board, ...beside];
}

/** Wrenches in the condition in which they were in the morning of a past day. */
export function wrenchesOn(tools: readonly Tool[], day: string): readonly Wrench[] {
  return tools.flatMap((tool) => {
    if (tool.kind !== 'wrench') return [];
    const later = tool.history?.find(
      (note) => note.kind === 'condition' && compareText(note.on, day) >= 0,
    );
    return later?.kind === 'condition' ? { ...tool.wrench, condition: later.from } : tool.wrench;
  });
}

function historyOf(notes: readonly DemoNote[], clock: Clock): readonly ToolNote[] {
  return notes.map(({ to, daysAgo, time, by, reason }, index) => {
    const then = createDemoClock(clock);
    then.goTo(daysAgo, time);
    const from = notes[index - 1]?.to ?? 'in service';
    return { kind: 'condition', from, to, on: then.today(), reason, by, at: then.now() };
  });
}
