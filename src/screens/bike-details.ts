/** What a box may say beyond the first questions: each with its answers, asked only where the bike can have the part. */

import {
  axleHeads,
  axleThreads,
  type Bike,
  batteries,
  bottomBrackets,
  chainJoins,
  chainringFixings,
  crankFixings,
  discMounts,
  drives,
  frameShapes,
  frontHubs,
  grips,
  hangers,
  headsets,
  hoses,
  loads,
  pedalStyles,
  pedalThreads,
  postShapes,
  preloadPlugs,
  rearHubs,
  rotorFixings,
  routings,
  saddleClamps,
  seatPosts,
  shifters,
  springs,
  stemAngles,
  tensions,
  tyreFits,
} from '../engine/bike';
import type { BoxDraft, DetailAnswers } from './box-answers';

export interface Detail {
  /** The dotted place in the description. */
  readonly place: string;
  /** Answers in words; none for a number. */
  readonly answers?: readonly string[];
  readonly isAsked?: (draft: BoxDraft) => boolean;
}

const yesNo = ['true', 'false'] as const;
const isDisc = (brake: Bike['front']['brake']) => brake.endsWith('-disc');
const hasDrive = ({ kind }: BoxDraft) => kind !== 'balance';
const isDerailleur = ({ gears }: BoxDraft) => gears.endsWith('derailleur');

function wheelDetails(wheel: 'front' | 'rear'): readonly Detail[] {
  const of = (draft: BoxDraft) =>
    wheel === 'front'
      ? { axle: draft.frontAxle, brake: draft.frontBrake }
      : { axle: draft.rearAxle, brake: draft.rearBrake };
  return [
    { place: `${wheel}.axleThread`, answers: axleThreads },
    {
      place: `${wheel}.axleHead`,
      answers: axleHeads,
      isAsked: (draft) => of(draft).axle === 'thru-axle',
    },
    { place: `${wheel}.hub`, answers: wheel === 'front' ? frontHubs : rearHubs },
    {
      place: `${wheel}.discMount`,
      answers: discMounts,
      isAsked: (draft) => isDisc(of(draft).brake),
    },
    {
      place: `${wheel}.rotor`,
      answers: rotorFixings,
      isAsked: (draft) => isDisc(of(draft).brake),
    },
    {
      place: `${wheel}.hose`,
      answers: hoses,
      isAsked: (draft) => of(draft).brake === 'hydraulic-disc',
    },
    { place: `${wheel}.tyreFit`, answers: tyreFits },
    { place: `${wheel}.hookless`, answers: yesNo },
    { place: `${wheel}.rimMaxKpa` },
    { place: `${wheel}.rimInnerWidth` },
    { place: `${wheel}.fitted`, answers: yesNo },
  ];
}

/** In the order of a walk round the bike. */
export const details: readonly Detail[] = [
  { place: 'battery', answers: batteries, isAsked: ({ assist }) => assist !== 'none' },
  { place: 'frame.shape', answers: frameShapes },
  { place: 'frame.minimumInsertion' },
  { place: 'frame.shock', answers: springs },
  { place: 'frame.load', answers: loads, isAsked: ({ kind }) => kind === 'cargo' },
  { place: 'fork.spring', answers: springs, isAsked: ({ fork }) => fork === 'suspension' },
  ...wheelDetails('front'),
  ...wheelDetails('rear'),
  {
    place: 'steering.faceplateBolts',
    answers: ['1', '2', '4'],
    isAsked: ({ stem }) => stem !== 'integrated',
  },
  { place: 'steering.controlsFitted', answers: yesNo },
  { place: 'steering.headset', answers: headsets },
  { place: 'steering.plug', answers: preloadPlugs, isAsked: ({ stem }) => stem !== 'quill' },
  { place: 'steering.stemAngle', answers: stemAngles },
  { place: 'steering.grip', answers: grips },
  { place: 'steering.routing', answers: routings },
  { place: 'seat.post', answers: seatPosts },
  { place: 'seat.postShape', answers: postShapes },
  { place: 'seat.saddleClamp', answers: saddleClamps },
  { place: 'gears.drive', answers: drives, isAsked: hasDrive },
  { place: 'gears.chainrings', answers: ['0', '1', '2', '3'], isAsked: hasDrive },
  {
    place: 'gears.shifter',
    answers: shifters,
    isAsked: (draft) => hasDrive(draft) && draft.gears !== 'single-speed',
  },
  {
    place: 'gears.hanger',
    answers: hangers,
    isAsked: (draft) => hasDrive(draft) && isDerailleur(draft),
  },
  {
    place: 'gears.tension',
    answers: tensions,
    isAsked: (draft) => hasDrive(draft) && !isDerailleur(draft),
  },
  { place: 'gears.join', answers: chainJoins, isAsked: hasDrive },
  { place: 'cranks.fixing', answers: crankFixings, isAsked: hasDrive },
  { place: 'cranks.fitted', answers: yesNo, isAsked: hasDrive },
  { place: 'cranks.bottomBracket', answers: bottomBrackets, isAsked: hasDrive },
  { place: 'cranks.chainring', answers: chainringFixings, isAsked: hasDrive },
  { place: 'pedals.supplied', answers: yesNo, isAsked: hasDrive },
  { place: 'pedals.thread', answers: pedalThreads, isAsked: hasDrive },
  { place: 'pedals.style', answers: pedalStyles, isAsked: hasDrive },
];

/** The answers of a bike, as the form writes them. */
export function detailsOf(bike: Bike): DetailAnswers {
  const answered = details.flatMap(({ place }) => {
    const answer = answerAt(bike, place);
    return answer === undefined ? [] : [[place, String(answer)] as const];
  });
  return Object.fromEntries(answered);
}

function answerAt(bike: Bike, place: string): unknown {
  return place
    .split('.')
    .reduce<unknown>(
      (part, name) =>
        typeof part === 'object' && part !== null ? Reflect.get(part, name) : undefined,
      bike,
    );
}

/** The description with the answers laid in it, each as its schema reads it; what is not asked of this bike stays out. */
export function withDetails<Description extends object>(
  description: Description,
  draft: BoxDraft,
): Description {
  const laid = structuredClone(description);
  for (const { place, answers, isAsked } of details) {
    const answer = draft.details[place]?.trim() ?? '';
    if (answer === '' || isAsked?.(draft) === false) continue;
    const path = place.split('.');
    const name = path.pop() ?? place;
    const part = path.reduce<object>((inner, step) => Reflect.get(inner, step) as object, laid); // every part is in the description
    Reflect.set(part, name, readAnswer(answer, answers));
  }
  return laid;
}

function readAnswer(
  answer: string,
  answers: readonly string[] | undefined,
): string | number | boolean {
  if (answer === 'true' || answer === 'false') return answer === 'true';
  const isNumber = answers === undefined || answers.every((one) => /^\d+$/.test(one));
  return isNumber ? Number(answer.replace(',', '.')) : answer;
}
