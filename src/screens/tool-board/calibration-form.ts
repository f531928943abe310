/** Everything typed of a calibration, kept as a draft until it is saved or given up. */

import type { Wrench } from '../../engine/torque';
import { yearAfter } from '../../state';
import { type DraftPoint, proposedPoints, type Way, ways } from './calibration-draft';

export const goings = ['as-it-is', 'adjusted', 'away', 'retired'] as const;
export type GoesOn = (typeof goings)[number];

export const givings = ['points', 'passed'] as const;

export interface CalibrationForm {
  readonly on: string;
  readonly dueOn: string;
  readonly reference: string;
  /** What the certificate gives. */
  readonly gives: (typeof givings)[number];
  readonly way: Way;
  readonly withUncertainty: boolean;
  readonly found: readonly DraftPoint[];
  readonly left: readonly DraftPoint[];
  readonly goesOn?: GoesOn | undefined;
  readonly how: string;
}

export function emptyForm(wrench: Wrench, today: string): CalibrationForm {
  return {
    on: today,
    dueOn: yearAfter(today),
    reference: '',
    gives: 'points',
    way: 'true',
    withUncertainty: false,
    found: proposedPoints(wrench),
    left: proposedPoints(wrench),
    how: '',
  };
}

export function draftKey(wrench: string): string {
  return `calibration ${wrench}`;
}

/** A draft that another version of the app has kept counts as far as it is understood. */
export function formFrom(draft: string | undefined, empty: CalibrationForm): CalibrationForm {
  const kept = objectIn(draft);
  const text = (member: 'on' | 'dueOn' | 'reference' | 'how') => {
    const value = kept[member];
    return typeof value === 'string' ? value : empty[member];
  };
  const points = (member: 'found' | 'left') => {
    const value = kept[member];
    return Array.isArray(value) && value.every(isPoint) ? value : empty[member];
  };
  return {
    on: text('on'),
    dueOn: text('dueOn'),
    reference: text('reference'),
    gives: givings.find((known) => known === kept.gives) ?? empty.gives,
    way: ways.find((known) => known === kept.way) ?? empty.way,
    withUncertainty: kept.withUncertainty === true,
    found: points('found'),
    left: points('left'),
    goesOn: goings.find((known) => known === kept.goesOn),
    how: text('how'),
  };
}

function objectIn(draft: string | undefined): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(draft ?? '');
    return typeof kept === 'object' && kept !== null ? { ...kept } : {};
  } catch {
    return {};
  }
}

function isPoint(value: unknown): value is DraftPoint {
  if (typeof value !== 'object' || value === null) return false;
  const { at, value: shown, uncertainty } = value as Partial<DraftPoint>;
  return [at, shown, uncertainty].every((text) => typeof text === 'string');
}
