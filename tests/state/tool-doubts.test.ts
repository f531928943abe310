/** When a wrench was in doubt: which time is looked into, why, and what is known of it. */

import { describe, expect, test } from 'vitest';
import { doubtsOf, isInDoubt, needsCalibration } from '../../src/state/tool-doubts';
import type { CertificatePoint, Tool, ToolNote } from '../../src/storage/contract';
import { wrench } from '../support/wrenches';

const by = 'petra';
const at = (day: string, time = '10:00') => ({
  claimed: `${day}T${time}:00+00:00`,
  zone: 'Europe/London',
});

function dropped(on: string, noted = on): ToolNote {
  const change = { from: 'in service', to: 'dropped', reason: 'Fell' } as const;
  return { kind: 'condition', by, at: at(noted), on, ...change };
}

function calibrated(
  on: string,
  own: Partial<Extract<ToolNote, { kind: 'calibrated' }>> = {},
): ToolNote {
  return {
    kind: 'calibrated',
    by,
    at: at(on),
    on,
    dueOn: '2027-12-31',
    since: '2026-01-01',
    found: good,
    foundOutside: false,
    isGood: true,
    operations: 0,
    ...own,
  };
}

const good: readonly CertificatePoint[] = [{ at: 5, deviation: 0.01 }];
const bad: readonly CertificatePoint[] = [{ at: 5, deviation: 0.09 }];
const outside = { found: bad, foundOutside: true };

function withNotes(history: readonly ToolNote[], condition = 'in service' as const) {
  const last = history.findLast((note) => note.kind === 'calibrated' && note.isGood);
  const calibratedOn = last?.kind === 'calibrated' ? last.on : '2026-01-01';
  const tool = { id: 'B', kind: 'wrench', history } as const;
  return { ...tool, wrench: wrench({ id: 'B', calibratedOn, condition }) };
}

describe('there is none', () => {
  test.each([
    ['of a wrench without notes', []],
    [
      'after calibrations that found it inside',
      [calibrated('2026-03-01'), calibrated('2026-06-01')],
    ],
    ['of one that was away', [{ ...dropped('2026-03-01'), to: 'away' } as ToolNote]],
  ])('%s', (_, history) => {
    expect(doubtsOf(withNotes(history))).toEqual([]);
    expect(needsCalibration(withNotes(history))).toBe(false);
  });
});

describe('there is one', () => {
  test('from the last good calibration to the one that found it outside', () => {
    const history = [
      calibrated('2026-03-01'),
      calibrated('2026-06-01', { ...outside, reference: 'Q-1' }),
    ];
    expect(doubtsOf(withNotes(history))).toMatchObject([
      {
        key: '1',
        cause: 'found-outside',
        on: '2026-06-01',
        reference: 'Q-1',
        since: { on: '2026-03-01' },
        until: { on: '2026-06-01' },
        found: bad,
      },
    ]);
    expect(needsCalibration(withNotes(history))).toBe(false);
  });

  test('after a drop, open and unmeasured until a calibration', () => {
    const [doubt] = doubtsOf(withNotes([dropped('2026-04-02')]));
    expect(doubt).toMatchObject({ cause: 'dropped', since: { on: '2026-01-01' }, reason: 'Fell' });
    expect(doubt?.until).toBeUndefined();
    expect(doubt?.found).toBeUndefined();
    expect(needsCalibration(withNotes([dropped('2026-04-02')]))).toBe(true);
  });

  test('after a drop, with what the calibration measured, even when it is inside', () => {
    const history = [dropped('2026-04-02'), calibrated('2026-04-09')];
    expect(doubtsOf(withNotes(history))).toMatchObject([
      { cause: 'dropped', on: '2026-04-02', found: good, until: { on: '2026-04-09' } },
    ]);
  });

  test('after a drop, still unmeasured where the certificate gave no values', () => {
    const [doubt] = doubtsOf(
      withNotes([dropped('2026-04-02'), calibrated('2026-04-09', { found: [] })]),
    );
    expect(doubt?.until).toMatchObject({ on: '2026-04-09' });
    expect(doubt?.found).toBeUndefined();
  });

  test('that a calibration without repair leaves open, with what was first found', () => {
    const history = [
      calibrated('2026-05-01', { ...outside, isGood: false }),
      calibrated('2026-05-20', { found: good }),
    ];
    expect(doubtsOf(withNotes(history.slice(0, 1)))[0]?.until).toBeUndefined();
    expect(needsCalibration(withNotes(history.slice(0, 1)))).toBe(true);
    expect(doubtsOf(withNotes(history))).toMatchObject([
      { found: bad, since: { on: '2026-01-01' }, until: { on: '2026-05-20' } },
    ]);
  });

  test('for each time, and the second begins where the first ended', () => {
    const history = [
      dropped('2026-02-01'),
      calibrated('2026-02-05', outside),
      dropped('2026-03-01'),
    ];
    expect(doubtsOf(withNotes(history)).map(({ key, since }) => [key, since.on])).toEqual([
      ['0', '2026-01-01'],
      ['2', '2026-02-05'],
    ]);
  });

  test('of a wrench that an older board already had marked', () => {
    const tool: Tool & { kind: 'wrench' } = {
      id: 'E',
      kind: 'wrench',
      wrench: wrench({ id: 'E', condition: 'dropped' }),
    };
    expect(doubtsOf(tool)).toMatchObject([{ key: 'condition', cause: 'dropped' }]);
    expect(needsCalibration(tool)).toBe(true);
  });
});

describe('what falls into it', () => {
  const doubt = {
    wrench: 'B',
    key: '1',
    cause: 'found-outside',
    on: '2026-06-01',
    since: { on: '2026-03-01', at: '2026-03-01T12:00:00+00:00' },
    until: { on: '2026-06-01' },
  } as const;

  test.each([
    ['2026-02-28T10:00:00+00:00', false],
    ['2026-03-01T11:59:00+00:00', false],
    ['2026-03-01T13:30:00+01:00', true],
    ['2026-04-01T08:00:00+00:00', true],
    ['2026-06-01T23:00:00+00:00', true], // entered on another day: nobody knows which came first
    ['2026-06-02T00:10:00+00:00', false],
  ])('%s: %s', (time, expected) => {
    expect(isInDoubt(doubt, time)).toBe(expected);
  });

  test('ends with the very entry of a calibration of that day', () => {
    const known = { ...doubt, until: { on: '2026-06-01', at: '2026-06-01T12:00:00+00:00' } };
    expect(isInDoubt(known, '2026-06-01T11:00:00+00:00')).toBe(true);
    expect(isInDoubt(known, '2026-06-01T12:30:00+00:00')).toBe(false);
  });

  test('goes on while it is open', () => {
    const { until: _, ...open } = doubt;
    expect(isInDoubt(open, '2027-01-01T08:00:00+00:00')).toBe(true);
  });
});
