/** Goods-in in English: labels of the fields that describe a bike, and what to write where one is not right. */

import type { EntryBounds } from '../../engine/bike';
import { bikePlaces } from './bike-places';

const wheel = { front: 'Front wheel', rear: 'Rear wheel' } as const;
const [axle, brake, tyre] = ['Axle', 'Brake', 'Tyre size on the side wall'] as const;

const kind = 'Kind of bike';
const pressure = 'Pressure on the side wall';
const steering = 'Stem';
const bar = 'Handlebar: shape';
const gears = 'Gears';
const speeds = 'Sprockets or speeds';
const clamp = 'Seat clamp';
const post = 'Seat post diameter, mm';
const fork = 'Fork';
const frameMaterial = 'Frame';
const barMaterial = 'Handlebar: material';
const postMaterial = 'Seat post';
const steererMaterial = 'Steerer';
const extras = 'Also on the bike';

/** Labels by the place in the description, for what stands at odds with another field. */
const labelByPlace: Readonly<Record<string, string>> = {
  kind,
  'front.axle': `${wheel.front}: ${axle}`,
  'rear.axle': `${wheel.rear}: ${axle}`,
  'front.brake': `${wheel.front}: ${brake}`,
  'rear.brake': `${wheel.rear}: ${brake}`,
  'fork.kind': fork,
  'fork.steerer': steererMaterial,
  'steering.stem': steering,
  'steering.bar': bar,
  'steering.barMaterial': barMaterial,
  'gears.kind': gears,
  'gears.speeds': speeds,
  'frame.material': frameMaterial,
  'seat.clamp': clamp,
  'seat.postMaterial': postMaterial,
  extras,
};

const answers: Readonly<Record<string, string>> = {
  'mountain-hardtail': 'mountain, hardtail',
  'mountain-full-suspension': 'mountain, full suspension',
  bmx: 'BMX',
  unknown: 'not known',
  true: 'yes',
  false: 'no',
};

/** An answer as it stands in its list. */
function answerText(answer: string): string {
  return answers[answer] ?? answer.replaceAll('-', ' ');
}

export const bikeFieldLabels = {
  kind,
  more: 'Wheels, brakes, steering, gears',
  wheel,
  axle,
  brake,
  tyre,
  tyreShape: 'Write the size as on the side wall, for example 57-622 or 29 x 2.25.',
  pressure,
  pressureHint: 'As printed, for example 40–65 psi. It can be read at the stand too.',
  steering,
  bar,
  gears,
  speeds,
  clamp,
  post,
  fork,
  materials: 'Materials',
  materialsHint:
    'Say what somebody has read on the part or been told by its maker. What is not known is treated as carefully as carbon, and nothing is computed for it.',
  frameMaterial,
  barMaterial,
  postMaterial,
  steererMaterial,
  extras,
  loadLimit: 'Load limit, kg',
  answerText,
  frameShape: 'Three to thirty letters and digits, as stamped on the frame.',
  gtinShape:
    'These digits are no article number: scan it again, or type the 8, 12, 13 or 14 digits under the bars. Leave it empty where there is none.',
  needed: 'This is needed.',
  /** What no bike has together, beside one of the two. */
  atOdds: (place: string, answer: string | number | boolean) =>
    `No bike has this together with ${labelByPlace[place] ?? bikePlaces[place] ?? place} “${answerText(String(answer))}”. Look at the bike and correct one of the two.`,
} as const;

/** `a number from 22 to 36 mm, for example 27.2`. */
export function boundsText({ min, max, unit, example, isWhole }: EntryBounds): string {
  const size = unit === '' ? '' : ` ${unit}`;
  return `a ${isWhole ? 'whole ' : ''}number from ${min} to ${max}${size}, for example ${example}`;
}
