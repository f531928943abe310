/** The draft of a hand-over read back: whatever an older or newer app kept, nothing is made up. */

import { expect, test } from 'vitest';
import { readHandOverDraft } from '../../../src/screens/hand-over/hand-over-draft';

const empty = { name: '', contact: '', firstCheck: '2027-01-06', told: [] } as const;
const topics = ['fit', 'axles', 'first-check'] as const;
const typed = {
  name: 'Ottilie Fenwick',
  contact: '0117 496 0000',
  firstCheck: '2027-02-01',
  told: ['first-check', 'fit'],
};

test.each([
  ['nothing kept', undefined, empty],
  ['no JSON', '{', empty],
  ['no draft', '[1]', empty],
  ['null', 'null', empty],
  [
    'everything, ticks in the order of the list',
    JSON.stringify(typed),
    { ...typed, told: ['fit', 'first-check'] },
  ],
  [
    'a topic this bike no longer needs',
    JSON.stringify({ ...typed, told: ['findings', 'axles'] }),
    { ...typed, told: ['axles'] },
  ],
  ['members of another shape', JSON.stringify({ name: 7, told: 'fit' }), empty],
])('%s', (_, kept, expected) => {
  expect(readHandOverDraft(kept, empty, topics)).toEqual(expected);
});
