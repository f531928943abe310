/** The second checker sees each pressure and insertion as it was measured last, with its limit. */

import { render, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { emptyJob, type JobPlan, type JobState } from '../../../src/engine/job';
import { AppContext } from '../../../src/screens/app-context';
import { ValueTable } from '../../../src/screens/second-check/value-table';
import { createTestApp } from '../../support/test-app';

const post = { id: 'inside', name: 'Post inside the frame', unit: 'mm', limit: { min: 63 } };
const tyre = { id: 'air', name: 'Front tyre', unit: 'kPa', limit: { min: 200, max: 400 } };
const plan = {
  steps: [
    { id: 'tyre', title: 'Inflate', measures: [tyre] },
    { id: 'post', title: 'Measure', measures: [post] },
  ],
  points: [{ id: 'post-depth', name: 'Post', measure: post }],
  contents: [],
} as unknown as JobPlan; // of a plan the table reads only measures
const mark = {
  by: 'imre',
  at: { claimed: '2026-11-25T09:00:00+00:00', zone: 'Europe/London' },
  entry: 'e',
  judged: 'inside',
  stale: false,
} as const;

test('the walk’s value stands in place of the step’s, and pressures in bar and psi', () => {
  show({
    ...emptyJob(plan),
    measures: {
      'tyre.air': { ...mark, value: 300, unit: 'kPa' },
      'post.inside': { ...mark, value: 100, unit: 'mm' },
      'post-depth.inside': { ...mark, by: 'petra', value: 120, unit: 'mm' },
    },
  });
  const rows = screen
    .getAllByRole('row')
    .map((row) =>
      [...row.querySelectorAll('th, td')].map((cell) => cell.textContent.replaceAll('\u00a0', ' ')),
    );
  // 300 kPa is 3.0 bar and 44 psi, 200 is 29 and 400 is 58 psi (1 psi = 6.894 757 kPa, NIST SP 811).
  expect(rows).toEqual([
    ['What', 'Measured', 'Limit', 'By'],
    [
      'Front tyre',
      '3.0 bar (44 psi)',
      'at least 2.0 bar (29 psi), at most 4.0 bar (58 psi)',
      'imre',
    ],
    ['Post inside the frame', '120 mm', 'at least 63 mm', 'petra'],
  ]);
});

test('nothing measured, no table', () => {
  show(emptyJob(plan));
  expect(screen.queryByRole('table')).toBeNull();
});

function show(state: JobState) {
  const { app } = createTestApp();
  render(
    <AppContext.Provider value={app}>
      <ValueTable state={state} />
    </AppContext.Provider>,
  );
}
