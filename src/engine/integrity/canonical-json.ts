/** The one text of a JSON value (RFC 8785), and its digest (SHA-256, FIPS 180-4). */

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import { assert } from '../base';

/** Deeper nesting than this is never written by us, and would let a hostile file exhaust the stack. */
export const deepestNesting = 64;

/**
 * The canonical text of a JSON value after RFC 8785: members sorted by UTF-16 code unit, numbers as ECMAScript writes
 * them, no white space. Members that are `undefined` are left out, as JSON does. Throws on anything that is not JSON.
 */
export function canonicalJson(value: unknown): string {
  const fault = jsonFault(value);
  assert(fault === undefined, `not JSON: ${fault}`);
  const text = canonicalize(value);
  assert(text !== undefined, 'not JSON: nothing to write');
  return text;
}

/** Lower-case hex SHA-256 of the canonical text of a JSON value. Throws on anything that is not JSON. */
export function digestOf(value: unknown): string {
  return digestOfBytes(utf8ToBytes(canonicalJson(value)));
}

/** Lower-case hex SHA-256 of bytes as they are: photos, drawn signatures, files. */
export function digestOfBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** What makes a value unfit for canonical JSON, or nothing. Checked first because the serializer lets functions through. */
export function jsonFault(value: unknown, within: readonly unknown[] = []): string | undefined {
  if (value === null || typeof value === 'boolean') return undefined;
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `the number ${value}`;
  if (typeof value === 'string') return hasLoneSurrogate(value) ? 'a lone surrogate' : undefined;
  if (typeof value !== 'object') return `a value of type ${typeof value}`;
  if (within.includes(value)) return 'a value that contains itself';
  if (within.length >= deepestNesting) return `nesting deeper than ${deepestNesting}`;
  return faultInside(value, [...within, value]);
}

function faultInside(value: object, within: readonly unknown[]): string | undefined {
  if (Array.isArray(value)) {
    // Array.from shows the holes of a sparse array as undefined, which JSON cannot hold.
    return firstFault(Array.from(value), within);
  }
  // By tag and not by prototype: a value read from another realm is still plain data.
  if (Object.prototype.toString.call(value) !== '[object Object]')
    return 'an object that is not plain';
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  return firstFault(members.flat(), within);
}

function firstFault(values: readonly unknown[], within: readonly unknown[]): string | undefined {
  for (const value of values) {
    const fault = jsonFault(value, within);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function hasLoneSurrogate(text: string): boolean {
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (code >= 0xd800 && code <= 0xdfff) return true;
  }
  return false;
}
