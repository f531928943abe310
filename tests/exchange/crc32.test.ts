/** The checksum of ZIP files against its published check value. */

import { expect, test } from 'vitest';
import { crc32 } from '../../src/exchange/crc32';

// The check value of CRC-32/ISO-HDLC for the digits 1 to 9 (catalogue of CRC algorithms, from memory); the second from memory too.
test.each([
  ['123456789', 0xcbf43926],
  ['The quick brown fox jumps over the lazy dog', 0x414fa339],
  ['', 0],
])('%j', (content, expected) => {
  expect(crc32(new TextEncoder().encode(content))).toBe(expected);
});
