import { describe, expect, test } from 'vitest';
import { applyShopChanges, forbiddenChange, type ShopChange } from '../../../src/engine/plan';
import { catalogueOf } from '../../support/catalogues';
import { adding } from '../../support/shop-versions';

const caution = 'Mind the spring.';
const born = {
  catalogue: catalogueOf({
    steps: [
      { id: 'stem', joint: 'stem', cautions: [caution] },
      { id: 'bottle', joint: 'bottle' },
    ],
    joints: [
      { id: 'stem', risk: 'A', usual: { min: 5, max: 6 } },
      { id: 'bottle', risk: 'C', usual: { min: 2, max: 3 } },
    ],
  }),
  points: [{ id: 'stem-point', reliesOn: ['stem'] }],
};
const now = applyShopChanges(born, []);
if (!now.ok) throw new Error(now.refusal.code);

const judged = (change: ShopChange) => now.ok && forbiddenChange(born, now.value, change);
const words = (cautions: string[]): ShopChange => ({
  kind: 'change-words',
  step: 'stem',
  words: { cautions },
});
const figure = (limits: Record<string, number>): ShopChange =>
  ({
    kind: 'approve-figure',
    make: 'Any',
    model: 'One',
    joint: 'stem',
    figure: limits,
  }) as ShopChange; // plain numbers for branded ones

describe('safety', () => {
  test('[P44] a class A joint keeps its tightening step, another may lose it', () => {
    expect(judged({ kind: 'switch-off', step: 'stem' })).toEqual({
      code: 'tightening-stays',
      step: 'stem',
      joint: 'stem',
    });
    expect(judged({ kind: 'switch-off', step: 'bottle' })).toBeUndefined();
  });

  test('[P44] cautions may be added, and none of the catalogue’s own taken away', () => {
    expect(judged(words([caution, 'Wear gloves.']))).toBeUndefined();
    for (const cautions of [[], ['Mind it.']])
      expect(judged(words(cautions))).toEqual({ code: 'caution-stays', step: 'stem', caution });
  });
});

describe('what makes no sense', () => {
  test.each<[situation: string, change: ShopChange, refusal: object | undefined]>([
    [
      'words that say nothing',
      { kind: 'change-words', step: 'stem', words: {} },
      { code: 'change-says-nothing' },
    ],
    ['a figure without limits', figure({}), { code: 'change-says-nothing' }],
    ['an effort in order', { kind: 'set-effort', step: 'stem', effort: [1, 1, 2] }, undefined],
    [
      'an effort whose likely time is past its most',
      { kind: 'set-effort', step: 'stem', effort: [1, 5, 2] },
      { code: 'effort-out-of-order', step: 'stem' },
    ],
    ['a figure near the usual range', figure({ min: 4, target: 5, max: 7 }), undefined],
    [
      'a figure upside down',
      figure({ min: 6, max: 5 }),
      { code: 'range-out-of-order', joint: 'stem' },
    ],
    [
      'a figure in another unit',
      figure({ min: 44, max: 53 }),
      { code: 'figure-far-from-usual', joint: 'stem', usual: { min: 5, max: 6 } },
    ],
    [
      'a figure with its point one place to the left',
      figure({ max: 0.5 }),
      { code: 'figure-far-from-usual', joint: 'stem', usual: { min: 5, max: 6 } },
    ],
    [
      'a question that no description answers',
      adding({ id: 'own-tag', when: { all: [{ ask: 'moon', is: 'full' }] } }),
      { code: 'own-question-unknown', question: 'moon' },
    ],
    [
      'an answer that no bike gives',
      adding({ id: 'own-tag', when: { not: { ask: 'front.brake', is: ['spoon'] } } }),
      { code: 'own-question-unknown', question: 'front.brake', answer: 'spoon' },
    ],
    [
      'a point that is not on the walk',
      adding({ id: 'own-tag' }, ['moon']),
      { code: 'own-point-unknown', step: 'own-tag', point: 'moon' },
    ],
    ['a point that is', adding({ id: 'own-tag' }, ['stem-point']), undefined],
    [
      'an own joint’s range upside down',
      {
        kind: 'add-joint',
        joint: {
          ...{ id: 'own-hook', name: 'hook', bolts: 1, layout: 'line', thread: 'M5' },
          ...{ hand: 'right', bit: '4 mm hex', preparation: 'grease', preparationNote: 'Thinly.' },
          ...{ usual: { min: 6, max: 6 }, risk: 'C', source: 'made up' },
        },
      } as ShopChange,
      { code: 'range-out-of-order', joint: 'own-hook' },
    ],
  ])('[P45] %s', (_, change, refusal) => {
    expect(judged(change)).toEqual(refusal);
  });
});
