/** Everything about one step as labels and what they say. */

import type { Step } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';
import { bornWhen } from './step-list';
import type { ShownCatalogue } from './use-catalogue';

export interface StepFact {
  readonly label: string;
  readonly value: string;
}

export function factsOfStep(step: Step, shown: ShownCatalogue): readonly StepFact[] {
  const text = catalogueWords.step;
  const { names } = shown;
  const { why, right, wrong, wayRound, tools, preparation, parts, after, reliesOn } = step;
  return given([
    [text.when, catalogueWords.conditionText(bornWhen(step, shown))],
    [text.why, why],
    [text.right, right],
    [text.wrong, wrong],
    [text.wayRound, wayRound],
    [text.tools, tools.join(', ')],
    [
      preparation ? words.terms.preparations[preparation.kind] : text.preparation,
      preparation?.note,
    ],
    [text.parts, parts.map(names.part).join(', ')],
    ...jointRows(step, shown),
    ...step.measures.map(
      ({ name, how, unit, limit }) =>
        [
          name,
          `${how} ${'rule' in limit ? `(${text.workedOut})` : `${words.writing.range(limit)} ${unit} (${limit.source})`}`,
        ] as const,
    ),
    [text.comesAfter, after.map(names.step).join(' · ')],
    [text.reliesOn, reliesOn.map(names.step).join(' · ')],
    [text.lookedAt, pointsOn(step.id, shown).join(' · ')],
    [text.effort, text.minutes(step.effort)],
  ]);
}

function jointRows(
  step: Step,
  { now }: ShownCatalogue,
): readonly (readonly [string, string | undefined])[] {
  const text = catalogueWords.step;
  const joint = now.catalogue.joints.find(({ id }) => id === step.joint);
  if (joint === undefined) return [];
  const { name, bolts, thread, hand, bit, usual, source, risk, preparationNote } = joint;
  const figures = now.figures.filter((one) => one.joint === joint.id);
  return [
    [text.joint, `${name}: ${text.bolts(bolts, thread, text.hands[hand], bit)}`],
    [words.terms.preparations[joint.preparation], preparationNote],
    [text.usual, text.usualText(words.writing.range(usual), source)],
    [text.risk, text.risks[risk]],
    [
      text.figures,
      figures
        .map(({ make, model, figure }) =>
          figure.source.kind === 'approved'
            ? text.figureOf(
                make,
                model,
                words.writing.range(figure),
                figure.source.by,
                words.day(figure.source.on),
              )
            : '',
        )
        .join('; '),
    ],
  ];
}

/** Names of the points that confirm it. */
function pointsOn(step: string, { now }: ShownCatalogue): readonly string[] {
  return now.points.filter(({ reliesOn }) => reliesOn.includes(step)).map(({ name }) => name);
}

function given(rows: readonly (readonly [string, string | undefined])[]): readonly StepFact[] {
  return rows.flatMap(([label, value]) =>
    value === undefined || value === '' ? [] : [{ label, value }],
  );
}
