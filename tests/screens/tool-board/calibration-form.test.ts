/** A calibration half typed comes back as it was left; what cannot be understood of it begins anew. */

import { expect, test } from 'vitest';
import { emptyForm, formFrom } from '../../../src/screens/tool-board/calibration-form';
import { fit } from '../../support/shown-board';

const empty = emptyForm(fit, '2026-11-25');

test('begins today, due in a year, with the points of ISO 6789-1:2017 to fill in', () => {
  expect(empty).toMatchObject({ on: '2026-11-25', dueOn: '2027-11-25', way: 'true' });
  expect(empty.found.map(({ at, value }) => [at, value])).toEqual([
    ['2', ''],
    ['8.4', ''],
    ['14', ''],
  ]);
});

test('comes back as it was left', () => {
  const typed = {
    ...empty,
    reference: 'Q-1',
    gives: 'points',
    way: 'deviation',
    withUncertainty: true,
    found: [{ at: '5', value: '−1', uncertainty: '0.5' }],
    goesOn: 'adjusted',
    how: 'Adjusted',
  } as const;
  expect(formFrom(JSON.stringify(typed), empty)).toEqual(typed);
});

test.each([
  ['nothing', undefined],
  ['no JSON', '{'],
  ['another shape', '[1, 2]'],
  ['members of other kinds', '{"on": 7, "way": "sideways", "found": [{"at": 1}], "goesOn": true}'],
])('takes %s for nothing typed', (_, draft) => {
  expect(formFrom(draft, empty)).toEqual({ ...empty, goesOn: undefined });
});
