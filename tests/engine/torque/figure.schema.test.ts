/** Figures from outside. */

import { describe, expect, test } from 'vitest';
import { figureSchema } from '../../../src/engine/torque';

const printed = { kind: 'part', printed: '4-6 Nm' };

describe('figureSchema', () => {
  test.each<[situation: string, figure: unknown]>([
    ['marked on the part', { min: 4, max: 6, source: printed }],
    ['a maximum from a document', { max: 5, source: { kind: 'document', reference: 'p. 12' } }],
    ['approved', { target: 5, source: { kind: 'approved', by: 'Ines', on: '2026-01-07' } }],
    ['usual', { min: 4, max: 6, source: { kind: 'usual' } }],
    ['usual, accepted', { min: 4, max: 6, source: { kind: 'usual', acceptedBy: 'Ines' } }],
  ])('[T24] %s passes unchanged', (_, figure) => {
    expect(figureSchema.parse(figure)).toEqual(figure);
  });

  test.each<[situation: string, figure: unknown]>([
    ['no source', { min: 4, max: 6 }],
    ['a source nobody knows', { min: 4, source: { kind: 'hearsay' } }],
    ['an empty marking', { min: 4, source: { kind: 'part', printed: '' } }],
    ['a day that is none', { max: 5, source: { kind: 'approved', by: 'Ines', on: '7/1/26' } }],
    ['approved by nobody', { max: 5, source: { kind: 'approved', on: '2026-01-07' } }],
    ['zero', { max: 0, source: printed }],
    ['text for a number', { max: '5', source: printed }],
    ['infinity', { max: Infinity, source: printed }],
  ])('[T24] %s does not pass', (_, figure) => {
    expect(figureSchema.safeParse(figure).success).toBe(false);
  });
});
