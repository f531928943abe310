/** Features of a bike that the catalogue has no work for: such a bike must not be built from it in silence. */

import { ok, type Refusal, type Result, refuse } from '../base';
import type { BikeFacts } from '../bike';
import type { Catalogue } from './catalogue.schema';
import { type Ground, groundsOf, holds, questionsAsked } from './condition';

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
  'seat.post',
  'cranks.fixing',
  'gears.tension',
] as const;

/** Features that always need work of their own: no catalogue may pass over them. */
const workOfItsOwn: readonly Ground[] = [
  ...rows('assist', 'mid-motor', 'hub-motor'),
  ...rows('battery', 'removable'),
  ...rows('kind', 'folding', 'tandem'),
  ...rows('frame.load', 'front-load', 'long-tail'),
  ...rows('frame.shock', 'air', 'coil'),
  ...rows('front.hub', 'motor'),
  ...rows('rear.hub', 'motor'),
  ...rows('front.hose', 'to-fit'),
  ...rows('rear.hose', 'to-fit'),
  ...rows('rear.fitted', false),
  ...rows('steering.controlsFitted', false),
  ...rows('steering.stemAngle', 'adjustable'),
  ...rows('steering.routing', 'through-headset'),
  ...rows('gears.kind', 'electronic-derailleur'),
  ...rows('gears.drive', 'belt'),
  ...rows('gears.chainrings', 2, 3),
  ...rows('gears.join', 'quick-link', 'pin'),
  ...rows('cranks.fitted', false),
  ...rows('seat.post', 'suspension', 'dropper-cable', 'dropper-hydraulic'),
  ...rows('seat.saddleClamp', 'clip'),
  ...rows(
    'extras',
    'stabilisers',
    'child-seat-mount',
    'basket',
    'front-rack',
    'motor-lights',
    'bar-ends',
    'pegs',
    'cable-detangler',
  ),
];

function rows(question: string, ...answers: readonly Ground['answer'][]): readonly Ground[] {
  return answers.map((answer) => ({ question, answer }));
}

/** A bike without a brake at that wheel asks for no work there. */
const nothingToBuild = 'none';

/** Whether the catalogue has work for every feature of the bike; if not, every feature it lacks is named. */
export function checkInsideCatalogue(
  catalogue: Catalogue,
  facts: BikeFacts,
): Result<BikeFacts, BikeOutsideCatalogue> {
  const { steps } = catalogue;
  const asked = new Set(steps.flatMap((step) => questionsAsked(step.when)));
  const grounds = [
    ...steps.flatMap((step) => groundsOf(step.when, facts)),
    ...variantGrounds(catalogue, facts),
  ];
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

/** What is said of a joint in this form, where a step of this bike tightens it. */
function variantGrounds({ steps, joints }: Catalogue, facts: BikeFacts): readonly Ground[] {
  const tightened = new Set(
    steps.filter(({ when }) => holds(when, facts)).flatMap(({ joint }) => joint ?? []),
  );
  return joints
    .filter(({ id }) => tightened.has(id))
    .flatMap(({ variants }) =>
      groundsOf(variants.find(({ when }) => holds(when, facts))?.when, facts),
    );
}

function hasAnswer(facts: BikeFacts, { question, answer }: Ground): boolean {
  const given = facts[question];
  return typeof given === 'object' ? given.some((one) => one === answer) : given === answer;
}

function isSame(a: Ground, b: Ground): boolean {
  return a.question === b.question && a.answer === b.answer;
}
