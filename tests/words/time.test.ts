/** Days and times as a person reads them, against days everybody can look up. */

import { describe, expect, test } from 'vitest';
import { words } from '../../src/words';

describe('a day has its weekday, its date and its year', () => {
  test.each([
    // [situation, day, weekday and date, date and year]; each is in the public record
    [
      'the first day of the Gregorian calendar',
      '1582-10-15',
      'Friday 15 October',
      '15 October 1582',
    ],
    ['people on the moon', '1969-07-20', 'Sunday 20 July', '20 July 1969'],
    ['the epoch of Unix', '1970-01-01', 'Thursday 1 January', '1 January 1970'],
    ['the fall of the wall in Berlin', '1989-11-09', 'Thursday 9 November', '9 November 1989'],
    ['the last day of 1999', '1999-12-31', 'Friday 31 December', '31 December 1999'],
    [
      'a leap day in a year that ends a century',
      '2000-02-29',
      'Tuesday 29 February',
      '29 February 2000',
    ],
    ['the day after it', '2000-03-01', 'Wednesday 1 March', '1 March 2000'],
    ['no leap day in 1900', '1900-03-01', 'Thursday 1 March', '1 March 1900'],
    ['a leap day', '2024-02-29', 'Thursday 29 February', '29 February 2024'],
    ['an ordinary collection day', '2026-11-28', 'Saturday 28 November', '28 November 2026'],
  ])('%s', (_, day, weekday, date) => {
    expect(words.day(day)).toBe(weekday);
    expect(words.date(day)).toBe(date);
  });

  test('the host’s own calendar agrees over four hundred years, day by day', () => {
    const names = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
    for (let day = Date.UTC(1901, 0, 1); day < Date.UTC(2301, 0, 1); day += 86_400_000) {
      const date = new Date(day);
      const said = words.day(date.toISOString());
      if (!said.startsWith(`${names[date.getUTCDay()]} ${date.getUTCDate()} `))
        expect.fail(`${date.toISOString()} is not ${said}`);
    }
  });
});

test('a time is the one that was claimed at the stand, whatever its offset', () => {
  expect(words.time('2026-11-25T07:05:59+13:00')).toBe('07:05');
  expect(words.date('2026-11-25T00:30:00+13:00')).toBe('25 November 2026');
  expect(words.time('2026-11-28')).toBe('');
});
