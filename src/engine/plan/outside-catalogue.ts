/** Features of a bike that the catalogue has no work for: such a bike must not be built from it in silence. */

import { ok, type Refusal, type Result, refuse } from '../base';
import type { BikeFacts } from '../bike';
import type { Catalogue } from './catalogue.schema';
import { type Ground, groundsOf, questionsAsked } from './condition';

/**
 * Features that every bike has in one form or another. A catalogue that tells the forms apart must know this
 * one; a catalogue that never asks treats all forms alike.
 */
const formsOfWork = [
  'steering.stem',
  'front.brake',
  'rear.brake',
  'front.axle',
  'rear.axle',
  'gears.kind',
  'seat.clamp',
] as const;

/** Features that always need work of their own: no catalogue may pass over them. */
const workOfItsOwn: readonly Ground[] = [
  { question: 'assist', answer: 'mid-motor' },
  { question: 'assist', answer: 'hub-motor' },
  { question: 'kind', answer: 'folding' },
  { question: 'kind', answer: 'tandem' },
  { question: 'kind', answer: 'cargo' },
  { question: 'kind', answer: 'mountain-full-suspension' },
  { question: 'gears.kind', answer: 'electronic-derailleur' },
  { question: 'seat.post', answer: 'dropper-cable' },
  { question: 'seat.post', answer: 'dropper-hydraulic' },
  { question: 'steering.controlsFitted', answer: false },
  { question: 'cranks.fitted', answer: false },
  { question: 'rear.fitted', answer: false },
  { question: 'extras', answer: 'stabilisers' },
  { question: 'extras', answer: 'child-seat-mount' },
  { question: 'extras', answer: 'basket' },
];

/** A bike without a brake at that wheel asks for no work there. */
const nothingToBuild = 'none';

/** Whether the catalogue has work for every feature of the bike; if not, every feature it lacks is named. */
export function checkInsideCatalogue(
  catalogue: Catalogue,
  facts: BikeFacts,
): Result<BikeFacts, BikeOutsideCatalogue> {
  const { steps } = catalogue;
  const asked = new Set(steps.flatMap((step) => questionsAsked(step.when)));
  const grounds = steps.flatMap((step) => groundsOf(step.when, facts));
  const isBuilt = (feature: Ground) => grounds.some((one) => isSame(one, feature));

  const forms = formsOfWork
    .filter((question) => asked.has(question))
    .flatMap((question) => {
      const answer = facts[question];
      const hasForm =
        answer !== undefined && typeof answer !== 'object' && answer !== nothingToBuild;
      return hasForm ? [{ question, answer }] : [];
    });
  const own = workOfItsOwn.filter((feature) => hasAnswer(facts, feature));
  const features = [...forms, ...own].filter(
    (feature, index, all) =>
      !isBuilt(feature) && all.findIndex((other) => isSame(other, feature)) === index,
  );
  return features.length === 0 ? ok(facts) : refuse({ code: 'bike-outside-catalogue', features });
}

export type BikeOutsideCatalogue = Refusal & {
  readonly code: 'bike-outside-catalogue';
  readonly features: readonly Ground[];
};

function hasAnswer(facts: BikeFacts, { question, answer }: Ground): boolean {
  const given = facts[question];
  return typeof given === 'object' ? given.some((one) => one === answer) : given === answer;
}

function isSame(a: Ground, b: Ground): boolean {
  return a.question === b.question && a.answer === b.answer;
}
