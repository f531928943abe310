import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BrokenInvariant } from '../../../src/engine/base';
import { type Activity, criticalPath } from '../../../src/engine/plan';

describe('small networks', () => {
  test.each<
    [
      situation: string,
      activities: Activity[],
      total: number,
      path: string[],
      slack: Record<string, number>,
    ]
  >([
    ['nothing to do', [], 0, [], {}],
    ['one thing', [{ id: 'a', minutes: 5, after: [] }], 5, ['a'], { a: 0 }],
    [
      'of equal chains the one named first',
      [
        { id: 'b', minutes: 5, after: [] },
        { id: 'a', minutes: 5, after: [] },
      ],
      5,
      ['b'],
      { b: 0, a: 0 },
    ],
    [
      'what is not in the list does not hold anything up',
      [{ id: 'a', minutes: 5, after: ['elsewhere'] }],
      5,
      ['a'],
      { a: 0 },
    ],
  ])('[P13] %s', (_, activities, total, path, slack) => {
    expect(criticalPath(activities)).toEqual({ minutes: total, path, slack });
  });

  test('[P13] a circle or an id named twice is a bug', () => {
    const a = { id: 'a', minutes: 1, after: ['b'] };
    const b = { id: 'b', minutes: 1, after: ['a'] };
    expect(() => criticalPath([a, b])).toThrow(BrokenInvariant);
    expect(() => criticalPath([{ ...a, after: [] }, a])).toThrow(BrokenInvariant);
  });
});

const networks = fc
  .array(
    fc.tuple(fc.integer({ min: 0, max: 30 }), fc.array(fc.nat({ max: 9 }), { maxLength: 3 })),
    {
      minLength: 1,
      maxLength: 10,
    },
  )
  .map((rows) =>
    rows.map(
      ([minutes, after], index): Activity => ({
        id: `n${index}`,
        minutes,
        after: after.filter((other) => other < index).map((other) => `n${other}`),
      }),
    ),
  );

test('[P13] against trying every chain: the length is the longest, and slack is what a delay may take', () => {
  fc.assert(
    fc.property(networks, fc.nat(), (activities, chosen) => {
      const longest = (list: readonly Activity[]): number => {
        const byId = new Map(list.map((activity) => [activity.id, activity]));
        const ending = (id: string): number => {
          const activity = byId.get(id);
          if (!activity) return 0;
          return activity.minutes + Math.max(0, ...activity.after.map(ending));
        };
        return Math.max(...list.map(({ id }) => ending(id)));
      };
      const found = criticalPath(activities);
      expect(found.minutes).toBe(longest(activities));
      const lengthOf = (id: string) => activities.find((one) => one.id === id)?.minutes ?? 0;
      expect(found.path.reduce((total, id) => total + lengthOf(id), 0)).toBe(found.minutes);

      const late = activities[chosen % activities.length];
      if (!late) return;
      const slack = found.slack[late.id] ?? 0;
      const delayedBy = (by: number) =>
        longest(
          activities.map((one) => (one === late ? { ...one, minutes: one.minutes + by } : one)),
        );
      expect(delayedBy(slack)).toBe(found.minutes);
      expect(delayedBy(slack + 1)).toBe(found.minutes + 1);
    }),
    { seed: 2404 },
  );
});
