/** Test points as they are typed: what the certificate means by them, judged as far as they are there. */

import { describe, expect, test } from 'vitest';
import { judged, pointIn, proposedPoints } from '../../../src/screens/tool-board/calibration-draft';
import { numberIn } from '../../../src/screens/tool-board/number-in';
import { fit } from '../../support/shown-board';

const typed = (at: string, value: string, uncertainty = '') => ({ at, value, uncertainty });

test('the points of ISO 6789-1:2017 are proposed: lowest, 60 % and highest', () => {
  expect(proposedPoints(fit).map(({ at }) => at)).toEqual(['2', '8.4', '14']);
});

describe('a number', () => {
  test.each([
    ['3,5', 3.5],
    ['−1.2', -1.2],
    ['+1.2', 1.2],
    ['–0.4', -0.4],
    ['', Number.NaN],
    ['1−2', Number.NaN],
  ])('%s', (text, value) => {
    expect(numberIn(text)).toBe(value);
  });
});

describe('a point', () => {
  // Deviation a = (indicated − true) / true: ISO 6789-1, from memory.
  test.each([
    ['what the tester showed', typed('20', '19.2'), 'true', { at: 20, deviation: 0.041667 }],
    [
      'what the tester showed, above',
      typed('20', '20.8'),
      'true',
      { at: 20, deviation: -0.038462 },
    ],
    ['a deviation', typed('20', '−3.5'), 'deviation', { at: 20, deviation: -0.035 }],
    [
      'with its uncertainty',
      typed('20', '1', '0.8'),
      'deviation',
      { at: 20, deviation: 0.01, uncertainty: 0.008 },
    ],
    ['nothing yet', typed('20', ''), 'true', undefined],
    ['no torque shown', typed('20', '0'), 'true', undefined],
    ['no test value', typed('', '5'), 'true', undefined],
    ['an uncertainty that is no number', typed('20', '1', '.'), 'deviation', undefined],
  ] as const)('is %s', (_, draft, way, point) => {
    expect(pointIn(draft, way)).toEqual(point);
  });
});

describe('points', () => {
  test('are judged as far as they are there', () => {
    const some = judged(fit, [typed('2', '1.9'), typed('8.4', ''), typed('14', '14')], 'true');
    expect(some.isComplete).toBe(false);
    expect(some.result).toMatchObject({ within: false, points: [{ at: 2 }, { at: 14 }] });
    expect(judged(fit, [typed('2', '')], 'true')).toEqual({ points: [], isComplete: false });
  });

  test('that cannot be are refused', () => {
    const far = judged(fit, [typed('20', '20')], 'true');
    expect(far.refusal).toMatchObject({ code: 'test-point-impossible', because: 'beyond-scale' });
  });
});
