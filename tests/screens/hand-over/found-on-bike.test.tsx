/** At the hand-over, what was let go stands first and apart with who and why; the rest comes worst first. */

import { render, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { emptyJob, type Finding, type JobState } from '../../../src/engine/job';
import { AppContext } from '../../../src/screens/app-context';
import { FoundOnBike } from '../../../src/screens/hand-over/found-on-bike';
import { createTestApp } from '../../support/test-app';

const mark = {
  by: 'sunniva',
  at: { claimed: '2026-11-25T09:00:00+00:00', zone: 'Europe/London' },
  entry: 'e',
} as const;

function found(id: string, severity: Finding['severity'], end: Partial<Finding> = {}): Finding {
  return { id, severity, text: `Text of ${id}`, photos: [], raised: mark, ...end };
}

test('each finding with its severity, in order', () => {
  show({
    ...emptyJob(),
    findings: [
      found('chip', 'tell-customer'),
      found('bell', 'before-hand-over', { closed: { ...mark, how: 'Turned' } }),
      found('hub', 'stop-ride', { allowed: { ...mark, reason: 'Known' } }),
    ],
  });
  expect(screen.getAllByRole('listitem').map((item) => item.textContent)).toEqual([
    'Stop-ride: Text of hub (let go by sunniva: Known)',
    'Before hand-over: Text of bell (put right: Turned)',
    'Tell the customer: Text of chip',
  ]);
  const [apart, others] = screen.getAllByRole('list');
  expect(apart?.parentElement).toHaveTextContent('Goes out like this on somebody’s word');
  expect(others?.parentElement).not.toBe(apart?.parentElement);
});

test('no findings, no heading', () => {
  show(emptyJob());
  expect(screen.queryByRole('heading')).toBeNull();
});

function show(state: JobState) {
  const { app } = createTestApp();
  render(
    <AppContext.Provider value={app}>
      <FoundOnBike state={state} />
    </AppContext.Provider>,
  );
}
