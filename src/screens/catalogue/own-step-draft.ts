/** An own step as it is typed, and the changes it becomes. */

import type { Zone } from '../../engine/base';
import type { Place } from '../../engine/bike';
import {
  answersByQuestion,
  type Condition,
  type OwnJoint,
  type OwnStep,
  type ShopChange,
  type Step,
} from '../../engine/plan';
import { linesOf, minutesOf, numberIn } from './typed';

export interface PickedCondition {
  readonly question: string;
  readonly answers: readonly string[];
}

export interface OwnStepDraft {
  readonly title: string;
  readonly how: string;
  readonly why: string;
  readonly right: string;
  readonly wrong: string;
  readonly zone: Zone;
  readonly place: Place;
  readonly tools: string;
  readonly cautions: string;
  readonly after: readonly string[];
  readonly reliesOn: readonly string[];
  readonly conditions: readonly PickedCondition[];
  readonly effort: readonly string[];
  readonly lookedAtBy: readonly string[];
  readonly joint?: JointDraft | undefined;
}

export interface JointDraft {
  readonly name: string;
  readonly bolts: string;
  readonly thread: string;
  readonly hand: OwnJoint['hand'];
  readonly bit: string;
  readonly preparation: OwnJoint['preparation'];
  readonly preparationNote: string;
  readonly min: string;
  readonly max: string;
  readonly risk: OwnJoint['risk'];
  readonly source: string;
}

export const emptyDraft: OwnStepDraft = {
  ...{ title: '', how: '', why: '', right: '', wrong: '', tools: '', cautions: '' },
  ...{ zone: 'whole-bike', place: 'whole-bike' },
  ...{ after: [], reliesOn: [], conditions: [], lookedAtBy: [], effort: ['1', '2', '3'] },
};

export const emptyJoint: JointDraft = {
  ...{ name: '', bolts: '1', thread: 'M5', hand: 'right', bit: '', risk: 'B' },
  ...{ preparation: 'grease', preparationNote: '', min: '', max: '', source: '' },
};

/** Fields that must say something. */
export const neededFields = ['title', 'how', 'why', 'right'] as const;
export const neededOfJoint = ['name', 'thread', 'bit', 'preparationNote', 'source'] as const;

/**
 * Nothing while a field that is needed says nothing, or a number is none. Of a step that is changed again, what the form
 * does not show stays: its joint, and conditions that were not touched.
 */
export function changesIn(
  draft: OwnStepDraft,
  id: string,
  held?: Step,
): readonly ShopChange[] | undefined {
  const effort = minutesOf(draft.effort);
  if (effort === undefined || neededFields.some((name) => draft[name].trim().length < 2))
    return undefined;
  const joint = draft.joint && jointIn(draft.joint, id);
  if (draft.joint !== undefined && joint === undefined) return undefined;
  const isUntouched =
    held !== undefined &&
    JSON.stringify(conditionsOf(held.when)) === JSON.stringify(draft.conditions);
  const when = isUntouched ? held.when : conditionIn(draft.conditions);
  const tightened = joint?.id ?? held?.joint;
  const step: OwnStep = {
    ...{ id, zone: draft.zone, place: draft.place },
    title: draft.title.trim(),
    how: draft.how.trim(),
    why: draft.why.trim(),
    right: draft.right.trim(),
    ...(draft.wrong.trim() !== '' && { wrong: draft.wrong.trim() }),
    tools: linesOf(draft.tools),
    cautions: linesOf(draft.cautions),
    after: [...draft.after],
    reliesOn: [...draft.reliesOn],
    ...(when && { when }),
    ...(tightened !== undefined && { joint: tightened }),
    ...(held?.side && { side: held.side }),
    ...(held?.wayRound !== undefined && { wayRound: held.wayRound }),
    ...(held?.preparation && { preparation: held.preparation }),
    effort,
  };
  const add: ShopChange = { kind: 'add-step', step, lookedAtBy: [...draft.lookedAtBy] };
  return joint === undefined ? [add] : [{ kind: 'add-joint', joint }, add];
}

function jointIn(draft: JointDraft, id: string): OwnJoint | undefined {
  const bolts = numberIn(draft.bolts);
  const [min, max] = [numberIn(draft.min), numberIn(draft.max)];
  if (bolts === undefined || !Number.isInteger(bolts)) return undefined;
  if (min === undefined || max === undefined) return undefined;
  if (neededOfJoint.some((name) => draft[name].trim().length < 2)) return undefined;
  return {
    ...{ id, bolts, layout: layoutFor(bolts), hand: draft.hand, risk: draft.risk },
    ...{ preparation: draft.preparation, usual: { min, max } },
    name: draft.name.trim(),
    thread: draft.thread.trim(),
    bit: draft.bit.trim(),
    preparationNote: draft.preparationNote.trim(),
    source: draft.source.trim(),
  };
}

function layoutFor(bolts: number): OwnJoint['layout'] {
  if (bolts === 1) return 'line';
  if (bolts === 2) return 'pair';
  return bolts === 4 ? 'rectangle' : 'ring';
}

/** All of them have to hold; answers of one question are choices. */
function conditionIn(picked: readonly PickedCondition[]): Condition | undefined {
  const parts = picked
    .filter(({ answers }) => answers.length > 0)
    .map(({ question, answers }): Condition => {
      if (question !== 'extras') return { ask: question, is: answers.map(answerIn(question)) };
      const each = answers.map((has) => ({ ask: question, has }));
      return each.length === 1 && each[0] ? each[0] : { any: each };
    });
  const [only] = parts;
  return parts.length > 1 ? { all: parts } : only;
}

function answerIn(question: string): (text: string) => string | boolean {
  const isYesNo = answersByQuestion.get(question)?.includes(true) ?? false;
  return (text) => (isYesNo ? text === 'true' : text);
}

/** As the step stands, to be changed again. */
export function draftOf(step: Step, lookedAtBy: readonly string[]): OwnStepDraft {
  const { title, how, why, right, wrong = '', zone, place, after, reliesOn } = step;
  return {
    ...{ title, how, why, right, wrong, zone, place, after, reliesOn, lookedAtBy },
    tools: step.tools.join('\n'),
    cautions: step.cautions.join('\n'),
    conditions: conditionsOf(step.when),
    effort: step.effort.map(String),
  };
}

function conditionsOf(when: Condition | undefined): readonly PickedCondition[] {
  if (when === undefined) return [];
  if ('all' in when) return when.all.flatMap(conditionsOf);
  if ('any' in when) {
    const answers = when.any.flatMap((one) => ('has' in one ? [one.has] : []));
    return [{ question: 'extras', answers }];
  }
  if ('has' in when) return [{ question: when.ask, answers: [when.has] }];
  if ('is' in when) return [{ question: when.ask, answers: [when.is].flat().map(String) }];
  return [];
}

/** An id from the title, one that is not taken. */
export function ownId(title: string, isTaken: (id: string) => boolean): string {
  const slug = title
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 40)
    .replace(/-$/, '');
  const base = slug === '' ? 'own-step' : `own-${slug}`;
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? base : `${base}-${number}`;
    if (!isTaken(id)) return id;
  }
}
