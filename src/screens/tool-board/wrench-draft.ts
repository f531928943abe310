/** A wrench while it is being typed, and what is wrong with it, field by field. */

import {
  type Wrench,
  type WrenchKind,
  type WrenchType,
  wrenchClassTable,
  wrenchSchema,
} from '../../engine/torque';
import type { TorqueUnit } from '../../engine/units';
import { boardWords } from '../../words/board-words';
import { numberIn } from './number-in';

export interface WrenchDraft {
  readonly id: string;
  readonly name: string;
  readonly kind: WrenchKind;
  readonly type: WrenchType;
  readonly class: Wrench['class'];
  readonly lowest: string;
  readonly highest: string;
  readonly increment: string;
  readonly unit: TorqueUnit;
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly operations: string;
}

/** The days of a certificate are read from it: no day is filled in before. */
export function wrenchDraft(wrench: Wrench | undefined): WrenchDraft {
  return {
    id: wrench?.id ?? '',
    name: wrench?.name ?? '',
    kind: wrench?.kind ?? 'click',
    type: wrench?.type ?? 'II',
    class: wrench?.class ?? 'A',
    lowest: String(wrench?.lowest ?? ''),
    highest: String(wrench?.highest ?? ''),
    increment: String(wrench?.increment ?? ''),
    unit: wrench?.unit ?? 'N·m',
    calibratedOn: wrench?.calibratedOn ?? '',
    dueOn: wrench?.dueOn ?? '',
    operations: '0',
  };
}

export type WrenchFaults = Partial<Readonly<Record<keyof WrenchDraft, string>>>;

export type WrenchReading =
  | { readonly ok: true; readonly wrench: Wrench }
  /** What to write, by field. */
  | { readonly ok: false; readonly faults: WrenchFaults };

/** Of a wrench on the board only its description is typed: its name and its calibrations stay. */
export function readWrench(draft: WrenchDraft, today: string, isNew: boolean): WrenchReading {
  const faults = { ...descriptionFaults(draft), ...(isNew && newFaults(draft, today)) };
  const parsed = wrenchSchema.safeParse(wrenchIn(draft));
  return parsed.success && Object.keys(faults).length === 0
    ? { ok: true, wrench: parsed.data }
    : { ok: false, faults };
}

/** Names go into addresses and records: letters, digits and hyphens. */
const usableName = /^[\p{L}\p{N}-]+$/u;

function wrenchIn({ operations, lowest, highest, increment, id, name, ...rest }: WrenchDraft) {
  return {
    ...rest,
    id: id.trim(),
    name: name.trim(),
    lowest: numberIn(lowest),
    highest: numberIn(highest),
    increment: numberIn(increment),
    operations: numberIn(operations),
    condition: 'in service',
  };
}

function descriptionFaults(draft: WrenchDraft): WrenchFaults {
  const { faults } = boardWords.toolBoard;
  const [lowest, highest] = [numberIn(draft.lowest), numberIn(draft.highest)];
  const isClassOfType = wrenchClassTable[draft.type][draft.class] !== undefined;
  return {
    ...(draft.name.trim() === '' && { name: faults.name }),
    ...(!isClassOfType && { class: faults.class(draft.type) }),
    ...(!(lowest > 0) && { lowest: faults.positive }),
    ...(!(highest > 0) && { highest: faults.positive }),
    ...(lowest > highest && { highest: faults.upsideDown }),
    ...(!(numberIn(draft.increment) > 0) && { increment: faults.increment }),
  };
}

function newFaults(draft: WrenchDraft, today: string): WrenchFaults {
  const { faults } = boardWords.toolBoard;
  const { calibratedOn, dueOn } = draft;
  const operations = numberIn(draft.operations);
  return {
    ...(!usableName.test(draft.id.trim()) && { id: faults.id }),
    ...(calibratedOn === '' && { calibratedOn: faults.calibratedOn }),
    ...(calibratedOn > today && { calibratedOn: faults.notYet }),
    ...(dueOn === '' && { dueOn: faults.dueOn }),
    ...(dueOn !== '' && dueOn <= calibratedOn && { dueOn: faults.dueBefore }),
    ...(!(Number.isInteger(operations) && operations >= 0) && { operations: faults.operations }),
  };
}
