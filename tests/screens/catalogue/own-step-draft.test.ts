/** An own step as typed, as the changes it becomes, and typed again without losing what the form does not show. */

import { describe, expect, test } from 'vitest';
import type { Step } from '../../../src/engine/plan';
import {
  changesIn,
  draftOf,
  emptyDraft,
  emptyJoint,
  ownId,
} from '../../../src/screens/catalogue/own-step-draft';
import { ownStep } from '../../support/shop-versions';

const typed = { ...emptyDraft, title: 'Hang the tag', how: 'So.', why: 'So.', right: 'So.' };
const joint = {
  ...emptyJoint,
  ...{ name: 'Tag hook', bit: '4 mm hex', preparationNote: 'Dry.', source: 'made up' },
  ...{ bolts: '2', min: '2', max: '3,5' },
};

describe('what was typed', () => {
  test('becomes a step, for every bike where nothing else is said', () => {
    expect(changesIn(typed, 'own-tag')).toEqual([
      {
        kind: 'add-step',
        step: ownStep({ ...stepOf(typed), id: 'own-tag', zone: 'whole-bike' }),
        lookedAtBy: [],
      },
    ]);
  });

  test('becomes a joint and the step that tightens it', () => {
    const changes = changesIn({ ...typed, joint }, 'own-tag');
    expect(changes).toMatchObject([
      { kind: 'add-joint', joint: { layout: 'pair', usual: { min: 2, max: 3.5 } } },
      { kind: 'add-step', step: { joint: 'own-tag' } },
    ]);
  });

  test.each([
    ['one question', [{ question: 'kind', answers: ['town'] }], { ask: 'kind', is: ['town'] }],
    [
      'yes or no',
      [{ question: 'cranks.fitted', answers: ['false'] }],
      { ask: 'cranks.fitted', is: [false] },
    ],
    [
      'several, all of which hold',
      [
        { question: 'kind', answers: ['town', 'trekking'] },
        { question: 'extras', answers: ['rack', 'basket'] },
        { question: 'battery', answers: [] },
      ],
      {
        all: [
          { ask: 'kind', is: ['town', 'trekking'] },
          {
            any: [
              { ask: 'extras', has: 'rack' },
              { ask: 'extras', has: 'basket' },
            ],
          },
        ],
      },
    ],
  ])('is for the bikes that were picked: %s', (_, conditions, when) => {
    expect(changesIn({ ...typed, conditions }, 'own-tag')).toMatchObject([{ step: { when } }]);
  });

  test.each([
    ['a title', { title: ' ' }],
    ['a time', { effort: ['1', 'soon', '3'] }],
    ['a joint’s range', { joint: { ...joint, max: '' } }],
    ['a whole number of bolts', { joint: { ...joint, bolts: '1.5' } }],
  ])('is nothing yet without %s', (_, part) => {
    expect(changesIn({ ...typed, ...part }, 'own-tag')).toBeUndefined();
  });
});

test('a step that is changed again keeps its joint and what the form does not show', () => {
  const held = ownStep({
    id: 'own-tag',
    joint: 'own-tag',
    side: 'left',
    wayRound: 'Arrow to the front.',
    preparation: { kind: 'grease', note: 'Thinly.' },
    when: { not: { ask: 'kind', is: 'balance' } },
  });
  const again = { ...draftOf({ ...held, parts: [], measures: [] } as Step, []), how: 'Otherwise.' };
  expect(changesIn(again, 'own-tag', { ...held, parts: [], measures: [] } as Step)).toEqual([
    { kind: 'add-step', step: { ...held, how: 'Otherwise.' }, lookedAtBy: [] },
  ]);
});

test.each([
  ['Hang the tag', [], 'own-hang-the-tag'],
  ['Hang the tag', ['own-hang-the-tag'], 'own-hang-the-tag-2'],
  ['Prüfe die Klingel', [], 'own-prufe-die-klingel'],
  ['???', [], 'own-step'],
  ['x'.repeat(90), [], `own-${'x'.repeat(40)}`],
])('%s has an id of its own', (title, taken: readonly string[], id) => {
  expect(ownId(title, (one) => taken.includes(one))).toBe(id);
});

function stepOf({ title, how, why, right }: typeof typed) {
  return { title, how, why, right };
}
