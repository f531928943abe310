/** Why a change of the catalogue is refused, in English: which bike, what is wrong, what to do. */

import {
  type ChangeForbidden,
  type ChangeUnmet,
  type PlanFault,
  type PlanRefusal,
  type PlanUnsound,
  questionsAsked,
  type Step,
  type VersionAltered,
} from '../../engine/plan';
import { answerName, bikeText, questionName } from './conditions';
import { range } from './writing';

/** What sentences need to know of the catalogue: names for ids, and which bikes a step is for. */
export interface CatalogueNames {
  readonly step: (id: string) => string;
  readonly joint: (id: string) => string;
  readonly part: (id: string) => string;
  readonly point: (id: string) => string;
  readonly conditionOf: (id: string) => Step['when'];
}

const asItIs = (id: string) => id;
export const plainCatalogueNames: CatalogueNames = {
  step: asItIs,
  joint: asItIs,
  part: asItIs,
  point: asItIs,
  conditionOf: () => undefined,
};

type CatalogueRefused =
  | ChangeForbidden
  | ChangeUnmet
  | PlanUnsound
  | VersionAltered
  | { readonly code: 'catalogue-for-supervisors' }
  | { readonly code: 'catalogue-reason-missing' }
  | { readonly code: 'catalogue-nothing-new' }
  | { readonly code: 'catalogue-undecided'; readonly subjects: readonly string[] }
  | { readonly code: 'catalogue-file-too-large'; readonly limit: number }
  | { readonly code: 'catalogue-file-not-readable' }
  | { readonly code: 'catalogue-file-of-another-version'; readonly version: number }
  | { readonly code: 'catalogue-file-malformed'; readonly place: string };

type Sentences<R extends { readonly code: string }, Rest extends unknown[]> = {
  readonly [Code in R['code']]: (
    facts: Extract<R, { readonly code: Code }>,
    ...rest: Rest
  ) => string;
};

const unchanged = 'Nothing was changed.';

export const catalogueRefusals: Sentences<CatalogueRefused, [CatalogueNames]> = {
  'tightening-stays': ({ step, joint }, names) =>
    `${names.step(step)} brings ${names.joint(joint)} to its figure; if that works loose, the rider falls. It cannot be switched off.`,
  'caution-stays': ({ step, caution }, names) =>
    `Cautions may be added to ${names.step(step)}, none may go. This one stays: “${caution}”`,
  'change-says-nothing': () => 'Nothing is different yet. Change something first.',
  'effort-out-of-order': () =>
    'The least time comes first, then the likely, then the most. Put the three minutes in order.',
  'range-out-of-order': ({ joint }, names) =>
    `The figure for ${names.joint(joint)} ends below where it begins. Read it again.`,
  'figure-far-from-usual': ({ joint, usual }, names) =>
    `For ${names.joint(joint)} ${range(usual)} N·m is usual; this is more than twice or less than half of it. Look at the unit and the decimal point.`,
  'own-point-unknown': ({ point }) => `The M check has no point called ${point}.`,
  'own-question-unknown': ({ question, answer }) =>
    answer === undefined
      ? `No description of a bike says “${question}”. Choose another condition.`
      : `No bike answers “${answer}” for ${questionName(question)}. Choose another answer.`,
  'version-to-take-back-unknown': () => 'This version is not here, so it cannot be taken back.',
  'change-without-step': ({ step }, names) =>
    `There is no step ${names.step(step)} for this to stand on. What stands on it has to go first.`,
  'change-without-joint': ({ joint }, names) =>
    `There is no joint ${names.joint(joint)} for this to stand on. Add the joint first.`,
  'own-id-taken': ({ id }) => `The catalogue has something called ${id} already. Choose another.`,
  'plan-unsound': ({ bike, because }, names) =>
    `This would spoil the plan of ${bikeText(bike, questionsOf(because, names))}: ${reason(because, names)}`,
  'catalogue-version-altered': ({ version, by }) =>
    `Version ${version} by ${by} says something else in this file than it did before, or stands there twice. Ask for a new file. ${unchanged}`,
  'catalogue-for-supervisors': () =>
    'A supervisor changes the catalogue. Ask one to step up, and tell them what you would change.',
  'catalogue-reason-missing': () => 'Say why, in a few words: those who build by it will ask.',
  'catalogue-nothing-new': () => `The file holds nothing that is not here already. ${unchanged}`,
  'catalogue-undecided': () => 'Decide first which of the two changes stands, for each of them.',
  'catalogue-file-too-large': () =>
    `This file is too large for changes of a catalogue. ${unchanged}`,
  'catalogue-file-not-readable': () =>
    `This file holds no changes of a Standbook catalogue. ${unchanged}`,
  'catalogue-file-of-another-version': () =>
    `This file was written by another version of Standbook. Update this one, then read it again. ${unchanged}`,
  'catalogue-file-malformed': ({ place }) =>
    `Something in this file is not as it must be${placeText(place)}. ${unchanged} Ask for a new file.`,
};

function placeText(place: string): string {
  const [, version] = /^versions\.(\d+)/.exec(place) ?? [];
  return version === undefined ? '' : ` (in version ${Number(version) + 1} of those it lists)`;
}

const reasons: Sentences<PlanRefusal | PlanFault, [CatalogueNames]> = {
  'plan-cycle': ({ cycle }, names) =>
    `the steps wait for each other in a circle (${cycle.map(names.step).join(' → ')}). Let one of them wait for less.`,
  'step-before-what-it-needs': ({ step, other }, names) =>
    `${names.step(step)} would stand before ${names.step(other)}, which it needs.`,
  'joint-tightened-twice': ({ joint }, names) =>
    `two steps would tighten ${names.joint(joint)}. Let only one do it.`,
  'joint-without-range': ({ joint }, names) => `${names.joint(joint)} would have no range.`,
  'joint-never-looked-at': ({ joint }, names) =>
    `nobody would look at ${names.joint(joint)} on the M check. Name a point that looks at it.`,
  'part-not-in-box': ({ step, part }, names) =>
    `${names.step(step)} needs ${names.part(part)}, which is not in its box.`,
  'part-not-needed': ({ part }, names) =>
    `${names.part(part)} would stay in its box: no step would fit it.`,
  'feature-passed-over': ({ question, answer }) =>
    `no step and no point would deal with it (${questionName(question)}: ${answerName(answer)}).`,
  'features-at-odds': () => 'its description contradicts itself.',
  'id-not-unique': ({ id }) => `${id} would stand in the catalogue twice.`,
  'step-unknown': ({ step }, names) => `a step it needs is missing (${names.step(step)}).`,
  'joint-unknown': ({ joint }, names) => `a joint it needs is missing (${names.joint(joint)}).`,
  'part-unknown': ({ part }, names) => `a part it needs is missing (${names.part(part)}).`,
  'bike-outside-catalogue': ({ features }) =>
    `no step would be left for ${features.map(({ question, answer }) => `${questionName(question)}: ${answerName(answer)}`).join('; ')}.`,
  'tyre-not-understood': () => 'its tyre size cannot be read.',
  'tyre-pressure-not-understood': () => 'its tyre pressure cannot be read.',
  'tyre-window-empty': () => 'no pressure suits both its tyre and its rim.',
  'tyre-narrower-than-rim': () => 'its tyre is no wider than its rim.',
};

function reason(because: PlanRefusal | PlanFault, names: CatalogueNames): string {
  const sentence = reasons[because.code] as (facts: unknown, names: CatalogueNames) => string; // the table has every code
  return sentence(because, names);
}

/** Which of the bike's answers make it one that the fault concerns. */
function questionsOf(because: PlanRefusal | PlanFault, names: CatalogueNames): readonly string[] {
  const steps = 'step' in because ? [because.step] : 'cycle' in because ? because.cycle : [];
  const asked = steps.flatMap((id) => questionsAsked(names.conditionOf(id)));
  if (because.code === 'feature-passed-over') return [because.question];
  if (because.code === 'bike-outside-catalogue')
    return because.features.map(({ question }) => question);
  if (because.code === 'part-not-needed') return questionsAsked(names.conditionOf(because.part));
  return asked;
}

export function catalogueRefusal(
  refused: { readonly code: string },
  names: CatalogueNames,
): string | undefined {
  if (!Object.hasOwn(catalogueRefusals, refused.code)) return undefined;
  const code = refused.code as CatalogueRefused['code']; // the table has it
  return (catalogueRefusals[code] as (facts: unknown, names: CatalogueNames) => string)(
    refused,
    names,
  );
}
