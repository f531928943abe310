import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { recordCode } from '../../../src/engine/job';

// Crockford's base 32 leaves out I, L, O and U, which are misread or misheard.
const spoken = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** The oracle: the low thirty bits of the first eight bytes of SHA-256 over the id as JSON, lowest first. */
function expected(job: string): string {
  const bytes = createHash('sha256').update(JSON.stringify(job)).digest();
  let bits = bytes.readUInt32BE(4) % 2 ** 30;
  let code = '';
  for (let letter = 0; letter < 6; letter += 1) {
    code += spoken[bits % 32];
    bits = Math.floor(bits / 32);
  }
  return `${code.slice(0, 2)}-${code.slice(2)}`;
}

test('[J23] is short, without letters that are misread, and the same for the same job', () => {
  fc.assert(
    fc.property(fc.uuid(), (job) => {
      expect(recordCode(job)).toMatch(/^[0-9A-HJKMNP-TV-Z]{2}-[0-9A-HJKMNP-TV-Z]{4}$/);
      expect(recordCode(job)).toBe(expected(job));
    }),
  );
});

test('[J23] tells two thousand jobs apart', () => {
  const codes = Array.from({ length: 2000 }, (_, index) => recordCode(`job-${index}`));
  expect(new Set(codes).size).toBe(2000);
});
