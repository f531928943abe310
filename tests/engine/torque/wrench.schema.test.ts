/** Wrenches from outside. */

import { describe, expect, test } from 'vitest';
import { wrenchSchema } from '../../../src/engine/torque';
import { wrench } from '../../support/wrenches';

describe('wrenchSchema', () => {
  test.each<[situation: string, own: object]>([
    ['a click wrench', { kind: 'click', operations: 0 }],
    ['a preset tool of one value', { kind: 'preset', class: 'B', lowest: 5, highest: 5 }],
    ['a beam', { kind: 'beam', type: 'I', class: 'A', unit: 'lbf·ft' }],
    ['a certificate for the whole scale', { certificate: { deviation: 0.02 } }],
    ['a certificate by points', { certificate: { points: [{ at: 5, deviation: -0.01 }] } }],
  ])('[T24] %s passes unchanged', (_, own) => {
    const given = { ...wrench(), ...own };
    expect(wrenchSchema.parse(given)).toEqual(given);
  });

  test.each<[situation: string, own: object]>([
    ['a scale that runs backwards', { lowest: 30 }],
    ['no step between settings', { increment: 0 }],
    ['type I class F, which ISO 6789-1 does not have (from memory)', { type: 'I', class: 'F' }],
    ['type I class G', { type: 'I', class: 'G' }],
    ['a unit nobody prints', { unit: 'N·mm' }],
    ['a condition nobody knows', { condition: 'fine' }],
    ['a day that is none', { dueOn: '2026-13-01' }],
    ['half an operation', { operations: 0.5 }],
    ['an empty certificate', { certificate: {} }],
    ['a certificate without points', { certificate: { points: [] } }],
    ['a deviation no tool has', { certificate: { deviation: 0.6 } }],
    ['no name', { name: '' }],
  ])('[T24] %s does not pass', (_, own) => {
    expect(wrenchSchema.safeParse({ ...wrench(), ...own }).success).toBe(false);
  });
});
