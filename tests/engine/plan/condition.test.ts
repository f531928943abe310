import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsOf, questions } from '../../../src/engine/bike';
import { type Condition, groundsOf, holds, questionsAsked } from '../../../src/engine/plan';
import { bikeFrom, townBike } from '../../support/bikes';

const facts = factsOf(bikeFrom(townBike));

describe('whether a condition holds for a town bike', () => {
  test.each<[situation: string, condition: Condition | undefined, expected: boolean]>([
    ['no condition', undefined, true],
    ['the answer is the one named', { ask: 'steering.stem', is: 'quill' }, true],
    ['the answer is another', { ask: 'steering.stem', is: 'threadless' }, false],
    [
      'the answer is one of several',
      { ask: 'front.brake', is: ['cantilever', 'linear-pull'] },
      true,
    ],
    ['none of several', { ask: 'front.brake', is: ['cantilever', 'dual-pivot'] }, false],
    ['one of no answers', { ask: 'front.brake', is: [] }, false],
    ['a number', { ask: 'gears.speeds', is: 7 }, true],
    ['a number is not its text', { ask: 'gears.speeds', is: '7' }, false],
    ['yes or no', { ask: 'rear.fitted', is: true }, true],
    ['a list has what is in it', { ask: 'extras', has: 'rack' }, true],
    ['a list lacks what is not', { ask: 'extras', has: 'basket' }, false],
    ['a single answer is no list', { ask: 'steering.stem', has: 'quill' }, false],
    ['a list is no single answer', { ask: 'extras', is: 'rack' }, false],
    ['an open question satisfies no `is`', { ask: 'front.discMount', is: 'post' }, false],
    ['an open question satisfies no `has`', { ask: 'front.discMount', has: 'post' }, false],
    ['an open question is not known', { ask: 'front.discMount', known: false }, true],
    ['an open question is not taken for known', { ask: 'front.discMount', known: true }, false],
    ['an answered question is known', { ask: 'steering.stem', known: true }, true],
    [
      'a name from the language itself is an open question',
      { ask: 'toString', known: true },
      false,
    ],
    ['`not` turns it round', { not: { ask: 'steering.stem', is: 'threadless' } }, true],
    ['`not` over an open question holds', { not: { ask: 'front.discMount', is: 'flat' } }, true],
    [
      'all of several',
      {
        all: [
          { ask: 'kind', is: 'town' },
          { ask: 'gears.kind', is: 'hub' },
        ],
      },
      true,
    ],
    [
      'all but one',
      {
        all: [
          { ask: 'kind', is: 'town' },
          { ask: 'gears.kind', is: 'derailleur' },
        ],
      },
      false,
    ],
    [
      'any of several',
      {
        any: [
          { ask: 'kind', is: 'road' },
          { ask: 'gears.kind', is: 'hub' },
        ],
      },
      true,
    ],
    ['all of nothing', { all: [] }, true],
    ['any of nothing', { any: [] }, false],
  ])('[P1] %s', (_, condition, expected) => {
    expect(holds(condition, facts)).toBe(expected);
  });
});

const leaf: fc.Arbitrary<Condition> = fc.record({
  ask: fc.constantFrom(...questions, 'no.such.question'),
  is: fc.constantFrom('hub', 'quill', 7, true),
});
const conditions = fc.letrec<{ whole: Condition }>((tie) => ({
  whole: fc.oneof(
    { depthSize: 'small' },
    leaf,
    fc.record({ all: fc.array(tie('whole'), { maxLength: 3 }) }),
    fc.record({ any: fc.array(tie('whole'), { maxLength: 3 }) }),
    fc.record({ not: tie('whole') }),
  ),
})).whole;

describe('properties', () => {
  test('[P1] `not` is always the opposite, and "neither" is "not either"', () => {
    fc.assert(
      fc.property(conditions, conditions, (a, b) => {
        expect(holds({ not: a }, facts)).toBe(!holds(a, facts));
        expect(holds({ all: [{ not: a }, { not: b }] }, facts)).toBe(
          !holds({ any: [a, b] }, facts),
        );
      }),
      { seed: 2401 },
    );
  });

  test('[P1] grounds are answers of the bike that the condition asked for; without holding there are none', () => {
    fc.assert(
      fc.property(conditions, (condition) => {
        const grounds = groundsOf(condition, facts);
        if (!holds(condition, facts)) expect(grounds).toEqual([]);
        for (const { question, answer } of grounds) {
          expect(questionsAsked(condition)).toContain(question);
          expect(facts[question]).toBe(answer);
        }
      }),
      { seed: 2402 },
    );
  });

  test('[P1] what only excludes is no ground', () => {
    expect(groundsOf({ not: { ask: 'steering.stem', is: 'threadless' } }, facts)).toEqual([]);
    expect(groundsOf({ ask: 'steering.stem', known: true }, facts)).toEqual([]);
    expect(groundsOf({ ask: 'extras', has: 'rack' }, facts)).toEqual([
      { question: 'extras', answer: 'rack' },
    ]);
    expect(
      groundsOf(
        {
          any: [
            { ask: 'kind', is: 'road' },
            { ask: 'gears.kind', is: ['hub'] },
          ],
        },
        facts,
      ),
    ).toEqual([{ question: 'gears.kind', answer: 'hub' }]);
  });
});
