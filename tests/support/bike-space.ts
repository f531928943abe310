/** The space of all bikes: every question of the description with the answers it allows, read from the schema itself. */

import { areAtOdds, type Bike, bikeSchema, contradictionsIn, extras } from '../../src/engine/bike';
import type { Space } from './covering-array';

export type Answer = string | number | boolean | undefined;

/** One thing in which bikes differ; `undefined` leaves the question open. */
export interface Parameter {
  readonly question: string;
  readonly answers: readonly Answer[];
}

/** By position in `parameters`, which of the parameter's answers. */
export type Choice = readonly number[];

/** What is no list of answers in the schema: a few values from each side of every limit that depends on it. */
const sampled: Readonly<Record<string, readonly Answer[]>> = {
  make: ['Harrier Works'],
  model: ['Any'],
  frameNumber: ['AA0001'],
  gtin: [undefined],
  colour: [undefined],
  size: [undefined],
  loadLimit: [undefined, 120],
  'frame.minimumInsertion': [undefined, 90],
  'front.tyre': ['40-622', '57-584', '28-622', '47-305'],
  'rear.tyre': ['40-622', '57-584', '28-622', '47-305'],
  'front.tyrePressure': [undefined, '40-65 psi', 'max 4.5 bar'],
  'rear.tyrePressure': [undefined, '40-65 psi', 'max 4.5 bar'],
  'front.rimMaxKpa': [undefined, 500],
  'rear.rimMaxKpa': [undefined, 500],
  'front.rimInnerWidth': [undefined, 21],
  'rear.rimInnerWidth': [undefined, 21],
  'steering.faceplateBolts': [1, 2, 4],
  'seat.postDiameter': [27.2, 31.6],
  'gears.chainrings': [1, 0, 2, 3],
  'gears.speeds': [1, 8, 12],
};

export const parameters: readonly Parameter[] = [
  ...parametersIn(bikeSchema, ''),
  ...extras.map((extra) => ({ question: `extras:${extra}`, answers: [false, true] })),
];

type SchemaLike = { readonly def: { readonly type: string } & Record<string, unknown> };

function parametersIn(schema: unknown, question: string): readonly Parameter[] {
  const { def } = schema as SchemaLike; // zod's own description of a schema
  if (sampled[question] !== undefined) return [{ question, answers: sampled[question] }];
  if (question === 'extras') return [];
  if (def.type === 'default') return parametersIn(def.innerType, question);
  if (def.type === 'optional')
    return parametersIn(def.innerType, question).map((one) => ({
      ...one,
      answers: [undefined, ...one.answers],
    }));
  if (def.type === 'enum')
    return [{ question, answers: Object.values(def.entries as Record<string, string>) }];
  if (def.type === 'boolean') return [{ question, answers: [false, true] }];
  if (def.type !== 'object') throw new Error(`no answers are known for ${question}`);
  return Object.entries(def.shape as Record<string, unknown>).flatMap(([name, inner]) =>
    parametersIn(inner, question === '' ? name : `${question}.${name}`),
  );
}

/** Whether some bike may have both answers. */
export function mayMeet(one: readonly [number, number], other: readonly [number, number]): boolean {
  const [a, b] = [featureOf(one), featureOf(other)];
  return a === undefined || b === undefined || !areAtOdds(a, b);
}

function featureOf([parameter, choice]: readonly [number, number]) {
  const { question = '', answers = [] } = parameters[parameter] ?? {};
  const answer = answers[choice];
  if (answer === undefined) return undefined;
  const [list = '', extra] = question.split(':');
  if (extra === undefined) return { question, answer };
  return answer === true ? { question: list, answer: extra } : undefined;
}

export function bikeFor(choice: Choice): Bike {
  const description: Record<string, unknown> = { extras: [] as string[] };
  for (const [index, { question, answers }] of parameters.entries()) {
    const answer = answers[choice[index] ?? 0];
    const [list = '', extra] = question.split(':');
    if (extra !== undefined) {
      if (answer === true) (description[list] as string[]).push(extra);
      continue;
    }
    const [part = '', name] = question.split('.');
    if (name === undefined) description[part] = answer;
    else description[part] = { ...(description[part] as object), [name]: answer };
  }
  return bikeSchema.parse(description);
}

/** All bikes that the description allows. */
export const bikeSpace: Space = {
  levels: parameters.map(({ answers }) => answers.length),
  mayMeet,
  accepts: (row) => contradictionsIn(bikeFor(row)).length === 0,
};

/** What prints on an axle or a tyre picks a row of a table and meets nothing else: a few of its answers stand for all. */
const mostAnswers = 13;
const fewEnough = 4;
const alikeQuestions = /\.(axleThread|tyre|tyrePressure|rimMaxKpa|rimInnerWidth)$/;

/** The same space with only these questions free and the rest at their first answer; long lists of likes cut short. */
export function spaceOf(asked: ReadonlySet<string>): Space {
  return {
    ...bikeSpace,
    levels: parameters.map(({ question, answers }) => {
      if (!asked.has(question)) return 1;
      return Math.min(answers.length, alikeQuestions.test(question) ? fewEnough : mostAnswers);
    }),
  };
}
