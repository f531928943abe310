/** The rack's order and its filters, and the figure book's keys. */

import { describe, expect, test } from 'vitest';
import { filterRows, sortRows } from '../../src/state';
import { figureKey, knownFigures } from '../../src/state/figure-book';
import type { JobRow } from '../../src/storage/contract';

function row(job: string, changes: Partial<JobRow> = {}): JobRow {
  return {
    job,
    heads: [],
    lamport: 1,
    seqs: {},
    count: 1,
    status: 'boxed',
    make: 'Larkfell',
    model: 'Hardtail 29',
    kind: 'mountain-hardtail',
    frameNumber: job.toUpperCase(),
    colour: 'Moss green',
    waiting: [],
    zones: [],
    steps: { done: 0, of: 0 },
    points: { done: 0, of: 0 },
    openFindings: 0,
    wrenchDays: [],
    ...changes,
  };
}

const jobsOf = (rows: readonly JobRow[]) => rows.map(({ job }) => job);

describe('the rack', () => {
  const rows = [
    row('nobody-asked'),
    row('gone-first', { status: 'handed-over', handedOverAt: '2026-11-01T10:00:00+00:00' }),
    row('saturday', { due: '2026-11-28T11:00' }),
    row('gone-last', { status: 'handed-over', handedOverAt: '2026-11-20T10:00:00+00:00' }),
    row('today', { due: '2026-11-25T17:00' }),
    row('today-nearly-ready', { due: '2026-11-25T17:00', status: 'to-be-checked' }),
  ];

  test('shows what is due first, then what nobody promised, then what has gone home', () => {
    const order = [
      'today-nearly-ready',
      'today',
      'saturday',
      'nobody-asked',
      'gone-last',
      'gone-first',
    ];
    expect(jobsOf(sortRows(rows))).toEqual(order);
    expect(jobsOf(sortRows(rows.toReversed()))).toEqual(order);
  });

  test('finds by state and by words in any order', () => {
    expect(jobsOf(filterRows(rows, { status: ['to-be-checked'] }))).toEqual(['today-nearly-ready']);
    expect(filterRows(rows, { text: 'green LARKFELL' })).toHaveLength(6);
    expect(jobsOf(filterRows(rows, { text: ' saturday moss' }))).toEqual(['saturday']);
    expect(filterRows(rows, { text: 'red' })).toEqual([]);
  });
});

describe('the figure book', () => {
  const figure = (max: number, source: object) => ({ max, source }) as never; // built by hand for the test
  const known = (joint: string, value: never, make = 'Larkfell') => ({
    id: `${joint}-${make}-${JSON.stringify(value)}`,
    make,
    model: 'Hardtail 29',
    joint,
    figure: value,
  });

  test('has one place for a make, model and joint however they were typed', () => {
    expect(figureKey(' LARKFELL', 'Hardtail  29', 'faceplate')).toBe(
      figureKey('Larkfell', 'hardtail 29 ', 'faceplate'),
    );
    expect(figureKey('a|b', 'c', 'd')).not.toBe(figureKey('a', 'b|c', 'd'));
  });

  test('gives the bike its own figures, the more trusted of two', () => {
    const approved = figure(6, { kind: 'approved', by: 'Petra', on: '2026-01-01' });
    const booklet = figure(5, { kind: 'document', reference: 'p. 8' });
    const rows = [
      known('faceplate', approved),
      known('faceplate', booklet),
      known('faceplate', approved, 'Osierbank'),
      known('saddle-rails', approved),
    ];
    const bike = { make: 'larkfell', model: 'Hardtail 29' };
    expect(knownFigures(rows, bike)).toEqual({ faceplate: booklet, 'saddle-rails': approved });
    expect(knownFigures(rows.toReversed(), bike)).toEqual(knownFigures(rows, bike));
  });
});
