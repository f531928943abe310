import { describe, expect, test } from 'vitest';
import { brakes, questions } from '../../../src/engine/bike';
import { answersByQuestion, unaskable } from '../../../src/engine/plan';
import { seedCatalogue, seedPoints } from '../../support/seed-catalogue';

describe('questions and their answers', () => {
  test('[P48] are those of the description, each with what it allows', () => {
    expect([...answersByQuestion.keys()].sort()).toEqual([...questions].sort());
    expect(answersByQuestion.get('front.brake')).toEqual([...brakes]);
    expect(answersByQuestion.get('cranks.fitted')).toEqual([true, false]);
    expect(answersByQuestion.get('extras')).toContain('bell');
    expect(answersByQuestion.get('front.tyre')).toEqual([]);
  });

  test('[P48] every condition that the app is born with can be asked', () => {
    for (const { id, when } of [...seedCatalogue().steps, ...seedPoints()])
      expect([id, unaskable(when)]).toEqual([id, undefined]);
  });
});
