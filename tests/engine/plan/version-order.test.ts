import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countingVersions, nextVersion, orderVersions } from '../../../src/engine/plan';
import { versionOf } from '../../support/shop-versions';

const off = [{ kind: 'switch-off', step: 'papers' }];
const back = (version: string) => [{ kind: 'take-back', version }];

describe('versions', () => {
  test('[P40] have one order, however they are dealt', () => {
    const versions = [
      versionOf(1, off),
      versionOf(2, off, { id: 'b' }),
      versionOf(2, off, { id: 'a' }),
      versionOf(3, off),
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(versions, { minLength: 4 }), (dealt) => {
        expect(orderVersions(dealt).map(({ id }) => id)).toEqual(['v1', 'a', 'b', 'v3']);
      }),
      { seed: 20261125 },
    );
  });

  test.each<[situation: string, takenBack: [number, string][], counting: string[]]>([
    ['nothing is taken back', [], ['v1']],
    ['the one that is taken back does not count', [[2, 'v1']], ['v2']],
    [
      'taken back, and the taking back taken back',
      [
        [2, 'v1'],
        [3, 'v2'],
      ],
      ['v1', 'v3'],
    ],
  ])('[P40] %s', (_, takenBack, counting) => {
    const versions = [
      versionOf(1, off),
      ...takenBack.map(([number, target]) => versionOf(number, back(target))),
    ];
    expect(countingVersions(versions).map(({ id }) => id)).toEqual(counting);
  });

  test('[P40] a new one is numbered after the highest that was seen', () => {
    expect(nextVersion([])).toBe(1);
    expect(nextVersion([versionOf(4, off), versionOf(2, off)])).toBe(5);
  });
});
