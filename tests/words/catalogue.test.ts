/** Conditions, bikes and refusals of the catalogue as a mechanic reads them. */

import { describe, expect, test } from 'vitest';
import { answersByQuestion, type Condition, questionsAsked } from '../../src/engine/plan';
import { catalogueWords, plainCatalogueNames } from '../../src/words/catalogue';
import { questionNames } from '../../src/words/en/conditions';
import { bikeFrom, townBike } from '../support/bikes';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

const { conditionText, bikeText, refusal, refusals } = catalogueWords;

describe('a condition', () => {
  test.each<[situation: string, condition: Condition | undefined, text: string]>([
    ['none', undefined, 'every bike'],
    ['one answer', { ask: 'steering.stem', is: 'quill' }, 'stem is quill'],
    [
      'several answers',
      { ask: 'front.brake', is: ['linear-pull', 'cantilever', 'roller'] },
      'front brake is linear-pull, cantilever or roller',
    ],
    ['what it has', { ask: 'extras', has: 'dynamo-lights' }, 'has dynamo lights'],
    ['what it lacks', { not: { ask: 'extras', has: 'bell' } }, 'has no bell'],
    ['yes and no', { ask: 'cranks.fitted', is: false }, 'cranks fitted in the box is no'],
    ['what is known', { ask: 'frame.shock', known: true }, 'rear shock is known'],
    ['what is not', { not: { ask: 'frame.shock', known: true } }, 'rear shock is not known'],
    [
      'all and any',
      {
        all: [
          { ask: 'kind', is: 'bmx' },
          { any: [{ ask: 'extras', has: 'pegs' }, { not: { ask: 'front.axle', is: 'nutted' } }] },
        ],
      },
      'kind of bike is BMX, and (has pegs, or front axle is not nutted)',
    ],
    ['never', { any: [] }, 'no bike'],
  ])('%s', (_, condition, text) => {
    expect(conditionText(condition)).toBe(text);
  });

  test('every question of the description has a name', () => {
    expect(Object.keys(questionNames).sort()).toEqual([...answersByQuestion.keys()].sort());
  });

  test('every one the app is born with reads without a code in it', () => {
    for (const { when } of [...seedCatalogue().steps, ...seedPoints()]) {
      const text = conditionText(when);
      for (const question of questionsAsked(when))
        if (question.includes('.')) expect(text).not.toContain(question);
      expect(text).not.toMatch(/true|false|undefined|\[object/);
    }
  });
});

test('a bike is told by its kind and the answers that matter', () => {
  const bike = bikeFrom(townBike, { extras: ['bell'] });
  expect(bikeText(bike, [])).toBe('a town bike');
  expect(bikeText(bike, ['front.brake', 'extras', 'battery', 'kind'])).toBe(
    'a town bike (front brake: linear-pull; with bell)',
  );
});

describe.each(Object.keys(refusals))('the refusal %s', (code) => {
  const facts = {
    ...{ code, step: 'stem', joint: 'stem', caution: 'Mind it.', usual: { min: 4, max: 6 } },
    ...{ point: 'bar', question: 'kind', id: 'own-tag', version: 3, by: 'Petra', subjects: [] },
    ...{ limit: 2, place: 'versions.1.by', bike: bikeFrom(townBike) },
    because: { code: 'part-not-needed', part: 'bell' },
  };

  test('is whole sentences, calm, for people', () => {
    const names = { ...plainCatalogueNames, step: () => 'Clamp the stem' };
    const text = refusal(facts, names) ?? '';
    expect(text).toMatch(/^[A-Z].*[.”]$/);
    expect(text).not.toMatch(/undefined|null|\[object|!|NaN/);
  });
});

test('what is not about the catalogue has its sentence elsewhere', () => {
  expect(refusal({ code: 'storage-full' }, plainCatalogueNames)).toBeUndefined();
});
