/** The short code by which a record is found: printed on the sheet, read over the telephone. */

import { digestOf } from '../integrity';

/** Crockford's base 32: no I, L, O or U. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Six characters from the job's id, for example `H7-4Q2M`; one chance in a thousand million of a pair meeting. */
export function recordCode(job: string): string {
  const bits = BigInt(`0x${digestOf(job).slice(0, 16)}`);
  const letters = Array.from({ length: 6 }, (_, index) => {
    return alphabet[Number((bits >> BigInt(5 * index)) & 31n)] ?? '';
  });
  return `${letters.slice(0, 2).join('')}-${letters.slice(2).join('')}`;
}
