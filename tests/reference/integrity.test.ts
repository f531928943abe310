/** Canonical JSON, SHA-256 and Merkle trees against published vectors. */

import { hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, test } from 'vitest';
import { canonicalJson, digestOfBytes, isIncluded, merkleTree } from '../../src/engine/integrity';

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

// Source of all rows: the test constants of transparency-dev/merkle, which follow RFC 6962 and RFC 9162, 2.1.
const leaves = [
  '',
  '00',
  '10',
  '2021',
  '3031',
  '40414243',
  '5051525354555657',
  '606162636465666768696a6b6c6d6e6f',
].map(hexToBytes);

describe('RFC 9162, Merkle tree hash', () => {
  test.each<[size: number, root: string]>([
    [0, 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [1, '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d'],
    [2, 'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125'],
    [3, 'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77'],
    [4, 'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7'],
    [5, '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4'],
    [6, '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef'],
    [7, 'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c'],
    [8, '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328'],
  ])('[I16] of the first %i leaves', (size, root) => {
    expect(merkleTree(leaves.slice(0, size)).root).toBe(root);
  });

  test('[I16] of one leaf is its leaf hash, prefix 00', () => {
    const leaf = new TextEncoder().encode('L123456');
    expect(merkleTree([leaf]).root).toBe(
      '395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56',
    );
  });

  test.each<[index: number, size: number, proof: readonly string[]]>([
    [
      0,
      8,
      [
        '96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7',
        '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e',
        '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4',
      ],
    ],
    [
      5,
      8,
      [
        'bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b',
        'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0',
        'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
      ],
    ],
    [2, 3, ['fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125']],
  ])('[I16] inclusion of leaf %i of %i', (index, size, proof) => {
    const tree = merkleTree(leaves.slice(0, size));
    const leaf = leaves[index] ?? new Uint8Array();
    expect(tree.proofOf(index)).toEqual(proof);
    expect(isIncluded({ leaf, index, size, proof, root: tree.root })).toBe(true);
    for (let place = 0; place < proof.length; place += 1) {
      const spoiled = proof.map((digest, at) => (at === place ? tree.root : digest));
      expect(isIncluded({ leaf, index, size, proof: spoiled, root: tree.root })).toBe(false);
    }
  });
});
