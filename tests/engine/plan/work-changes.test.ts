import { describe, expect, test } from 'vitest';
import { changesIn } from '../../../src/engine/plan';

type Row = readonly [zone: 'frame' | 'seat', tool?: string, side?: 'left' | 'right' | 'both'];

const stepsFrom = (rows: readonly Row[]) =>
  rows.map(([zone, tool, side]) => ({ zone, tools: tool === undefined ? [] : [tool], side }));

describe('changes', () => {
  test.each<[situation: string, rows: Row[], zone: number, tool: number, side: number]>([
    ['nothing to do', [], 0, 0, 0],
    ['to take up the first of each is no change', [['frame', 'hex', 'left']], 0, 0, 0],
    [
      'each kind is counted',
      [
        ['frame', 'hex', 'left'],
        ['seat', 'pump', 'right'],
      ],
      1,
      1,
      1,
    ],
    [
      'bare hands leave the tool where it is',
      [['frame', 'hex'], ['frame'], ['frame', 'hex']],
      0,
      0,
      0,
    ],
    [
      'both sides move nobody',
      [
        ['frame', 'hex', 'left'],
        ['frame', 'hex', 'both'],
        ['frame', 'hex', 'left'],
      ],
      0,
      0,
      0,
    ],
    ['there and back is two', [['frame'], ['seat'], ['frame']], 2, 0, 0],
  ])('[P16] %s', (_, rows, zone, tool, side) => {
    expect(changesIn(stepsFrom(rows))).toEqual({ zone, tool, side, total: zone + tool + side });
  });

  test('[P16] the tool named first is the one in the hand', () => {
    const steps = [
      { zone: 'frame', tools: ['5 mm hex bit', 'Torque wrench'], side: undefined },
      { zone: 'frame', tools: ['5 mm hex bit', 'Card'], side: undefined },
      { zone: 'frame', tools: ['Torque wrench', '5 mm hex bit'], side: undefined },
    ] as const;
    expect(changesIn(steps.map((step) => ({ ...step, tools: [...step.tools] }))).tool).toBe(1);
  });
});
