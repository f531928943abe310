/** When a backup is due: after a week with work in it, and from the first box until there was one. */

import { describe, expect, test } from 'vitest';
import { type BackupState, backupDue, type JobRow } from '../../src/state';

const rows = [{ count: 30 }, { count: 12 }] as unknown as readonly JobRow[]; // all that is read of them
const last = { day: '2026-11-18', records: 2, entries: 42, root: 'a'.repeat(64) };
const state = (changes: Partial<BackupState> = {}): BackupState => ({
  loaded: true,
  isRestoring: false,
  ...changes,
});

// A week: common practice, no source.
describe('a backup', () => {
  test.each<[string, BackupState, readonly JobRow[], string, number | 'never' | undefined]>([
    ['of an empty book is not asked for', state(), [], '2026-11-25', undefined],
    ['was never taken', state(), rows, '2026-11-25', 'never'],
    [
      'is not spoken of before it is known',
      state({ loaded: false }),
      rows,
      '2026-11-25',
      undefined,
    ],
    ['that nothing came after lasts', state({ last }), rows, '2027-01-25', undefined],
    ['is young enough', state({ last: { ...last, entries: 40 } }), rows, '2026-11-24', undefined],
    ['is a week old', state({ last: { ...last, entries: 40 } }), rows, '2026-11-25', 7],
    ['is a month old', state({ last: { ...last, entries: 40 } }), rows, '2026-12-18', 30],
  ])('%s', (_, backup, held, today, due) => {
    expect(backupDue(backup, held, today)).toBe(due);
  });
});
