/** Canonical JSON and digests: what is written, and what is refused. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  canonicalJson,
  deepestNesting,
  digestOf,
  digestOfBytes,
} from '../../../src/engine/integrity';

const loop: unknown[] = [];
loop.push(loop);

function nested(depth: number): unknown {
  return depth === 0 ? 1 : [nested(depth - 1)];
}

describe('canonicalJson', () => {
  test('[I1] any JSON value has the same text however its members were entered, and reads back the same', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(membersReversed(value))).toBe(text);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
    );
  });

  test.each<[situation: string, value: unknown]>([
    ['nothing at all', undefined],
    ['a function', () => 1],
    ['a function as member', { run: () => 1 }],
    ['a symbol', Symbol('s')],
    ['a big integer', 1n],
    ['not a number', { torque: Number.NaN }],
    ['an infinity', [Number.POSITIVE_INFINITY]],
    ['undefined in a list', [undefined]],
    ['a list with a hole', new Array(2)],
    ['a date', { at: new Date(0) }],
    ['a map', new Map()],
    ['bytes', new Uint8Array(2)],
    ['half a surrogate pair', '\ud83d'],
    ['the second half alone', 'a\udc00b'],
    ['half a surrogate pair in a name', { '\ud83d': 1 }],
    ['a list that contains itself', loop],
    ['nesting one too deep', nested(deepestNesting + 1)],
  ])('[I2] refuses %s', (_, value) => {
    expect(() => canonicalJson(value)).toThrow('not JSON');
  });

  test('[I2] leaves out undefined members, keeps whole surrogate pairs and the deepest nesting', () => {
    expect(canonicalJson({ b: undefined, a: '🚲' })).toBe('{"a":"🚲"}');
    expect(canonicalJson(nested(deepestNesting))).toContain('1');
  });

  test('[I2] accepts the same thing twice when it does not contain itself', () => {
    const bolt = { size: 5 };
    expect(canonicalJson([bolt, bolt])).toBe('[{"size":5},{"size":5}]');
  });
});

test('[I3] the digest of a value is the digest of the UTF-8 bytes of its canonical text', () => {
  const value = { torque: 5, joint: 'Vorbau – 4×M5' };
  const bytes = new TextEncoder().encode(canonicalJson(value));
  expect(digestOf(value)).toBe(digestOfBytes(bytes));
  expect(digestOf(value)).toMatch(/^[0-9a-f]{64}$/);
});

function membersReversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(membersReversed);
  if (typeof value !== 'object' || value === null) return value;
  const members = Object.entries(value).reverse();
  return Object.fromEntries(members.map(([name, member]) => [name, membersReversed(member)]));
}
