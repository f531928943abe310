/** Canonical JSON and SHA-256 against published vectors. */

import { describe, expect, test } from 'vitest';
import { canonicalJson, digestOfBytes } from '../../src/engine/integrity';

describe('SHA-256', () => {
  test.each<[situation: string, message: string, digest: string, source: string]>([
    [
      'no bytes',
      '',
      'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
      'NIST example values for FIPS 180-4',
    ],
    [
      'one block',
      'abc',
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
      'NIST example values for FIPS 180-4',
    ],
    [
      'two blocks, 448 bits',
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
      'NIST example values for FIPS 180-4',
    ],
    [
      'two blocks, 896 bits',
      'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
      'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1',
      'NIST example values for FIPS 180-4 (from memory)',
    ],
    [
      'a million letters',
      'a'.repeat(1_000_000),
      'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
      'NIST example values for FIPS 180-4 (from memory)',
    ],
  ])('[I3] %s', (_, message, digest) => {
    expect(digestOfBytes(new TextEncoder().encode(message))).toBe(digest);
  });
});

describe('RFC 8785', () => {
  // Source of all rows: the test data published with RFC 8785.
  test.each<[situation: string, json: string, canonical: string]>([
    ['arrays', '[56,{"d":true,"10":null,"1":[ ]}]', '[56,{"1":[],"10":null,"d":true}]'],
    [
      'an order that ignores the locale',
      '{"sin":"ignore locale","péché":"is wrong according to French","pêche":"but canonicalization MUST","peach":"This sorting order"}',
      '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"}',
    ],
    [
      'structures',
      '{"1":{"f":{"f":"hi","F":5},"\\n":56.0},"10":{},"":"empty","a":{},"111":[{"e":"yes","E":"no"}],"A":{}}',
      '{"":"empty","1":{"\\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}',
    ],
    [
      'text that is not normalised',
      '{"Unnormalized Unicode":"A\\u030a"}',
      '{"Unnormalized Unicode":"A\u030a"}',
    ],
    [
      'values',
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    ],
  ])('[I1] %s', (_, json, canonical) => {
    expect(canonicalJson(JSON.parse(json))).toBe(canonical);
  });

  // RFC 8785, appendix B: IEEE 754 bits and their text (rows from memory).
  test.each<[bits: string, text: string]>([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
  ])('[I1] the number with the bits %s is written %s', (bits, text) => {
    const view = new DataView(new ArrayBuffer(8));
    view.setBigUint64(0, BigInt(`0x${bits}`));
    expect(canonicalJson(view.getFloat64(0))).toBe(text);
  });
});
