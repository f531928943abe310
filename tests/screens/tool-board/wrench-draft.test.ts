/** A wrench that is typed is judged field by field, and each field says what to write. */

import { describe, expect, test } from 'vitest';
import {
  readWrench,
  type WrenchDraft,
  wrenchDraft,
} from '../../../src/screens/tool-board/wrench-draft';
import { boardWords } from '../../../src/words/board-words';
import { fit, today } from '../../support/shown-board';

const { faults } = boardWords.toolBoard;

const typed: WrenchDraft = {
  ...wrenchDraft(undefined),
  id: 'K',
  name: 'Click wrench 1–6 N·m',
  lowest: '1',
  highest: '6',
  increment: '0,1',
  calibratedOn: '2026-03-02',
  dueOn: '2027-03-02',
};

describe('a new wrench', () => {
  test('is one when every field is right', () => {
    expect(readWrench(typed, today, true)).toMatchObject({
      ok: true,
      wrench: { id: 'K', increment: 0.1, condition: 'in service', operations: 0 },
    });
  });

  test.each<[string, Partial<WrenchDraft>, object]>([
    ['a name that no address can hold', { id: 'K/2' }, { id: faults.id }],
    ['nothing said of it', { name: ' ' }, { name: faults.name }],
    // ISO 6789-1:2017, from memory: type I has the classes A to E; F and G are of type II only.
    ['a class of the other type', { type: 'I', class: 'G' }, { class: faults.class('I') }],
    ['a scale upside down', { lowest: '8' }, { highest: faults.upsideDown }],
    ['a scale from nought', { lowest: '0' }, { lowest: faults.positive }],
    ['a step in words', { increment: 'small' }, { increment: faults.increment }],
    ['no day of calibration', { calibratedOn: '' }, { calibratedOn: faults.calibratedOn }],
    ['a day that has not come', { calibratedOn: '2026-12-24' }, { calibratedOn: faults.notYet }],
    ['no day on which it is due', { dueOn: '' }, { dueOn: faults.dueOn }],
    ['due before it was calibrated', { dueOn: '2026-03-01' }, { dueOn: faults.dueBefore }],
    ['half an operation', { operations: '0.5' }, { operations: faults.operations }],
  ])('names the field: %s', (_, changes, expected) => {
    expect(readWrench({ ...typed, ...changes }, today, true)).toEqual({
      ok: false,
      faults: expected,
    });
  });
});

test('of a wrench on the board only the description is judged', () => {
  const held = { ...wrenchDraft({ ...fit, dueOn: fit.calibratedOn }), name: 'Long click wrench' };
  expect(readWrench(held, today, false)).toMatchObject({ ok: true, wrench: { id: 'B' } });
  expect(readWrench({ ...held, lowest: '' }, today, false)).toEqual({
    ok: false,
    faults: { lowest: faults.positive },
  });
});
