import { describe, expect, test } from 'vitest';
import { chainLoop, run } from '../../src/drawing/geometry/chain-loop';
import { pitchRadius } from '../../src/drawing/geometry/drive';

describe('a chain round its sprockets', () => {
  test('the straight runs of two circles turning alike are the outer tangents', () => {
    const rear = { centre: { x: 0, y: 0 }, radius: 40, turns: 1 as const };
    const front = { centre: { x: 400, y: 0 }, radius: 40, turns: 1 as const };
    const { leave, arrive } = run(rear, front);
    expect(leave).toEqual({ x: 0, y: -40 }); // the upper run goes forward at the height of both tops
    expect(arrive).toEqual({ x: 400, y: -40 });
  });

  test('a run touches each circle square to its radius, also where the sense changes', () => {
    const guide = { centre: { x: 12, y: 90 }, radius: 20, turns: -1 as const };
    const rear = { centre: { x: 0, y: 0 }, radius: 60, turns: 1 as const };
    const { leave, arrive } = run(guide, rear);
    const along = { x: arrive.x - leave.x, y: arrive.y - leave.y };
    for (const [end, wheel] of [
      [leave, guide],
      [arrive, rear],
    ] as const) {
      const spoke = { x: end.x - wheel.centre.x, y: end.y - wheel.centre.y };
      expect(Math.hypot(spoke.x, spoke.y)).toBeCloseTo(wheel.radius, 6);
      expect(spoke.x * along.x + spoke.y * along.y).toBeCloseTo(0, 6);
    }
  });

  test('the loop has one arc for each circle and closes', () => {
    const path = chainLoop([
      { centre: { x: 0, y: 0 }, radius: 40, turns: 1 },
      { centre: { x: 430, y: 60 }, radius: 65, turns: 1 },
      { centre: { x: 30, y: 160 }, radius: 20, turns: 1 },
      { centre: { x: 12, y: 90 }, radius: 20, turns: -1 },
    ]);
    expect(path.match(/A/g)).toHaveLength(4);
    expect(path.endsWith('Z')).toBe(true);
  });

  // Pitch diameters for half-inch chain: 32 teeth 129.57 mm, 50 teeth 202.26 mm (p / sin(180°/z), ISO 606, from memory)
  test.each([
    [32, 129.57],
    [50, 202.26],
  ])('%d teeth have a pitch diameter of %d mm', (teeth, diameter) => {
    expect(pitchRadius(teeth) * 2).toBeCloseTo(diameter, 1);
  });
});
