/** Features that somebody must build or look at: a bike that has one is not done until a step or a point has dealt with it. */

import type { BikeFacts } from '../bike';
import type { Ground } from './condition';

/** By question, the answers that ask for no work and no look of their own; what is not listed here always asks for some. */
const asksNothing: Readonly<Record<string, readonly Ground['answer'][]>> = {
  assist: ['none'],
  battery: [],
  'frame.shock': [],
  'frame.load': [],
  'frame.material': ['aluminium', 'steel', 'titanium'],
  'fork.kind': [],
  'fork.steerer': ['aluminium', 'steel', 'titanium'],
  'fork.spring': ['coil'],
  ...bothWheels({
    axle: [],
    axleHead: ['hex'],
    brake: ['none'],
    discMount: ['post'],
    rotor: ['six-bolt'],
    hose: ['fitted'],
    tyreFit: ['tube'],
    hookless: [false],
  }),
  'front.hub': ['plain'],
  'rear.hub': ['plain'],
  'front.fitted': [true],
  'rear.fitted': [true],
  'steering.stem': [],
  'steering.barMaterial': ['aluminium', 'steel', 'titanium'],
  'steering.controlsFitted': [true],
  'steering.headset': ['cups'],
  'steering.plug': ['star-nut'],
  'steering.stemAngle': ['fixed'],
  'steering.grip': ['slip-on'],
  'steering.routing': ['outside'],
  'seat.clamp': [],
  'seat.post': [],
  'seat.postMaterial': ['aluminium', 'steel', 'titanium'],
  'seat.saddleClamp': ['one-bolt'],
  'gears.kind': [],
  'gears.drive': ['none'],
  'gears.chainrings': [0, 1],
  'gears.shifter': ['in-brake-lever'],
  'gears.hanger': [],
  'gears.tension': [],
  'gears.join': ['joined'],
  'cranks.fixing': [],
  'cranks.fitted': [true],
  'cranks.bottomBracket': [],
  'cranks.chainring': ['direct', 'riveted'],
  'pedals.supplied': [false],
  'pedals.style': ['platform'],
  extras: [],
};

/** Kinds with a frame that has to be put together. */
const kindsWithWork: readonly Ground['answer'][] = ['folding', 'tandem'];

function bothWheels(
  rows: Readonly<Record<string, readonly Ground['answer'][]>>,
): Readonly<Record<string, readonly Ground['answer'][]>> {
  const of = (wheel: string) =>
    Object.entries(rows).map(([name, answers]) => [`${wheel}.${name}`, answers] as const);
  return Object.fromEntries([...of('front'), ...of('rear')]);
}

/** The features of one bike that a step must build or a point must look at. Source: common practice, no source. */
export function featuresToHandle(facts: BikeFacts): readonly Ground[] {
  const features = Object.entries(asksNothing).flatMap(([question, exempt]) =>
    answersOf(facts, question)
      .filter((answer) => !exempt.includes(answer))
      .map((answer) => ({ question, answer })),
  );
  const kind = answersOf(facts, 'kind').filter((answer) => kindsWithWork.includes(answer));
  return [...features, ...kind.map((answer) => ({ question: 'kind', answer }))];
}

function answersOf(facts: BikeFacts, question: string): readonly Ground['answer'][] {
  const answer = facts[question];
  if (answer === undefined) return [];
  return typeof answer === 'object' ? answer : [answer];
}
