/** Operations of a wrench: what was entered at its calibration, and what the app has counted since. */

import { describe, expect, test } from 'vitest';
import { operationsCounted, withCountedOperations } from '../../src/state/counted-operations';
import type { Tool } from '../../src/storage/contract';
import { wrench } from '../support/wrenches';

const rows = [
  {
    wrenchDays: [
      ['B', '2026-03-01', 5],
      ['B', '2026-03-02', 7],
      ['D', '2026-03-02', 2],
    ],
  },
  {
    wrenchDays: [
      ['B', '2026-03-02', 1],
      ['B', '2026-03-05', 10],
    ],
  },
  { wrenchDays: [] },
] as const;

function board(calibratedOn: string, operations?: number, countedBefore?: number): Tool {
  return {
    id: 'B',
    kind: 'wrench',
    wrench: wrench({ id: 'B', calibratedOn, ...(operations !== undefined && { operations }) }),
    ...(countedBefore !== undefined && { countedBefore }),
  };
}

function shown(tool: Tool): number | undefined {
  const [counted] = withCountedOperations([tool], rows);
  return counted?.kind === 'wrench' ? counted.wrench.operations : undefined;
}

test('those of a day on which it was calibrated are told apart from later ones', () => {
  expect(operationsCounted(rows, 'B', '2026-03-02')).toEqual({ since: 18, onTheDay: 8 });
  expect(operationsCounted(rows, 'E', '2026-01-01')).toEqual({ since: 0, onTheDay: 0 });
});

describe('what the board shows', () => {
  test.each([
    ['nothing entered, all counted since', board('2026-02-01'), 23],
    ['what was entered, and what came since', board('2026-02-01', 100), 123],
    ['only from the day of the calibration on', board('2026-03-02', 100), 118],
    ['not what was done earlier on that day', board('2026-03-02', 0, 6), 12],
    ['nothing for days to come', board('2026-03-06', 40), 40],
    ['never less than was entered', board('2026-03-06', 40, 3), 40],
  ])('%s', (_, tool, operations) => {
    expect(shown(tool)).toBe(operations);
  });

  test('an adapter counts nothing', () => {
    const adapter = { id: 'x', kind: 'adapter', name: 'Crowfoot' } as unknown as Tool;
    expect(withCountedOperations([adapter], rows)).toEqual([adapter]);
  });
});
