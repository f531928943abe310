/** Critical paths and three-point estimates against textbook networks. */

import { describe, expect, test } from 'vitest';
import { criticalPath, effortOf, type ThreePoints } from '../../src/engine/plan';

type Network = Record<string, [length: number, after: string]>;

const activitiesOf = (network: Network) =>
  Object.entries(network).map(([id, [minutes, after]]) => ({ id, minutes, after: [...after] }));

describe('critical path', () => {
  test.each<
    [
      situation: string,
      network: Network,
      total: number,
      path: string,
      slack: Record<string, number>,
      source: string,
    ]
  >([
    [
      'an air filter is installed',
      {
        A: [2, ''],
        B: [3, ''],
        C: [2, 'A'],
        D: [4, 'AB'],
        E: [4, 'C'],
        F: [3, 'C'],
        G: [5, 'DE'],
        H: [2, 'FG'],
      },
      15,
      'ACEGH',
      { A: 0, B: 1, C: 0, D: 1, E: 0, F: 6, G: 0, H: 0 },
      'Heizer & Render, Operations Management (slack recomputed)',
    ],
    [
      'parts are designed, made and assembled',
      { A: [6, ''], B: [2, 'A'], C: [2, 'A'], D: [3, 'B'], F: [2, 'C'], E: [4, 'DF'], G: [1, 'E'] },
      16,
      'ABDEG',
      { A: 0, B: 0, C: 1, D: 0, E: 0, F: 1, G: 0 },
      'a published class exercise with its full table',
    ],
    [
      'seven estimated activities',
      {
        A: [4, ''],
        B: [16 / 3, ''],
        C: [31 / 6, 'A'],
        D: [19 / 3, 'A'],
        E: [31 / 6, 'BC'],
        F: [4.5, 'D'],
        G: [31 / 6, 'E'],
      },
      19.5,
      'ACEG',
      { A: 0, B: 23 / 6, C: 0, D: 14 / 3, E: 0, F: 14 / 3, G: 0 },
      'Wikipedia, Program evaluation and review technique (from memory, recomputed)',
    ],
  ])('[P13] %s', (_, network, total, path, slack) => {
    const found = criticalPath(activitiesOf(network));
    expect(found.minutes).toBeCloseTo(total, 9);
    expect(found.path.join('')).toBe(path);
    for (const [id, expected] of Object.entries(slack))
      expect(found.slack[id]).toBeCloseTo(expected, 9);
    expect(Object.keys(found.slack).sort()).toEqual(Object.keys(slack).sort());
  });

  test('[P13] activities on arrows: 1-3-4-5-6 in 20', () => {
    // Source: Taylor, Management Science, chapter 8 (arrows from event to event, rewritten as predecessors).
    const arrows: [id: string, length: number, after: string[]][] = [
      ['1-2', 7, []],
      ['1-3', 10, []],
      ['2-4', 6, ['1-2']],
      ['3-4', 5, ['1-3']],
      ['3-5', 4, ['1-3']],
      ['4-5', 3, ['2-4', '3-4']],
      ['5-6', 2, ['4-5', '3-5']],
    ];
    const found = criticalPath(arrows.map(([id, minutes, after]) => ({ id, minutes, after })));
    expect(found.minutes).toBe(20);
    expect(found.path).toEqual(['1-3', '3-4', '4-5', '5-6']);
    expect(found.slack).toEqual({
      '1-2': 2,
      '1-3': 0,
      '2-4': 2,
      '3-4': 0,
      '3-5': 4,
      '4-5': 0,
      '5-6': 0,
    });
  });
});

describe('three-point estimates', () => {
  test.each<[estimate: ThreePoints, expected: number, variance: number, source: string]>([
    [[1, 2, 3], 2, 1 / 9, 'Heizer & Render, activity A'],
    [[2, 4, 6], 4, 4 / 9, 'Heizer & Render, activity D'],
    [[1, 4, 7], 4, 1, 'Heizer & Render, activity E'],
    [[1, 2, 9], 3, 16 / 9, 'Heizer & Render, activity F'],
    [[3, 4, 11], 5, 16 / 9, 'Heizer & Render, activity G'],
    [[5, 8, 17], 9, 4, 'Taylor, Management Science, activity 1'],
    [[7, 10, 13], 10, 1, 'Taylor, Management Science, activity 2'],
    [[3, 3, 3], 3, 0, 'Taylor, Management Science, activity 6'],
  ])('[P12] %j → %d', (estimate, expected, variance) => {
    const effort = effortOf([estimate]);
    expect(effort.expected).toBeCloseTo(expected, 12);
    expect(effort.spread ** 2).toBeCloseTo(variance, 12);
  });

  test.each<
    [situation: string, chain: ThreePoints[], expected: number, variance: number, source: string]
  >([
    [
      'the five critical activities of the air filter',
      [
        [1, 2, 3],
        [1, 2, 3],
        [1, 4, 7],
        [3, 4, 11],
        [1, 2, 3],
      ],
      15,
      28 / 9,
      'Heizer & Render: variance 3.11, deviation 1.76',
    ],
    [
      'four critical activities',
      [
        [5, 8, 17],
        [3, 5, 7],
        [4, 6, 8],
        [3, 4, 5],
      ],
      24,
      5,
      'Taylor, Management Science: 24, variance 5',
    ],
  ])('[P12] %s', (_, chain, expected, variance) => {
    const effort = effortOf(chain);
    expect(effort.expected).toBeCloseTo(expected, 12);
    expect(effort.spread).toBeCloseTo(Math.sqrt(variance), 12);
  });
});
