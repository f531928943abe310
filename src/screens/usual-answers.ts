/** The commonest answers for each kind of bike; every one can be changed. */

import type { BikeKind } from '../engine/bike';
import type { BoxDraft } from './box-answers';

export type UsualAnswers = Pick<
  BoxDraft,
  | 'fork'
  | 'frontAxle'
  | 'rearAxle'
  | 'frontBrake'
  | 'rearBrake'
  | 'stem'
  | 'bar'
  | 'gears'
  | 'speeds'
  | 'clamp'
  | 'post'
  | 'extras'
  | 'details'
>;

const mountain: UsualAnswers = {
  fork: 'suspension',
  frontAxle: 'quick-release',
  rearAxle: 'quick-release',
  frontBrake: 'hydraulic-disc',
  rearBrake: 'hydraulic-disc',
  stem: 'threadless',
  bar: 'riser',
  gears: 'derailleur',
  speeds: '12',
  clamp: 'bolt',
  post: '30.9',
  extras: ['reflectors', 'bell', 'spoke-guard'],
  details: {},
};

const town: UsualAnswers = {
  fork: 'rigid',
  frontAxle: 'nutted',
  rearAxle: 'nutted',
  frontBrake: 'linear-pull',
  rearBrake: 'linear-pull',
  stem: 'quill',
  bar: 'swept',
  gears: 'hub',
  speeds: '7',
  clamp: 'bolt',
  post: '27.2',
  extras: ['mudguards', 'rack', 'stand', 'bell', 'reflectors', 'chainguard'],
  details: {},
};

const road: UsualAnswers = {
  ...mountain,
  fork: 'rigid',
  frontAxle: 'thru-axle',
  rearAxle: 'thru-axle',
  bar: 'drop',
  post: '27.2',
  extras: ['reflectors', 'bell'],
  details: { 'gears.chainrings': '2', 'cranks.fixing': 'splined' },
};

const small: UsualAnswers = {
  ...town,
  bar: 'riser',
  gears: 'single-speed',
  speeds: '1',
  post: '25.4',
  rearBrake: 'coaster',
  extras: ['bell', 'reflectors', 'chainguard'],
};

/** Source: what a general shop mostly receives; common practice, no source. */
export const usualAnswers: Readonly<Record<BikeKind, UsualAnswers>> = {
  road,
  gravel: { ...road, details: { 'cranks.fixing': 'splined' } },
  'mountain-hardtail': mountain,
  'mountain-full-suspension': {
    ...mountain,
    frontAxle: 'thru-axle',
    rearAxle: 'thru-axle',
    extras: ['reflectors', 'bell'],
    details: { 'cranks.fixing': 'splined', 'seat.post': 'dropper-cable' },
  },
  town,
  trekking: town,
  folding: { ...town, clamp: 'quick-lever', bar: 'flat', post: '33.9' },
  cargo: town,
  bmx: {
    ...small,
    stem: 'threadless',
    rearBrake: 'linear-pull',
    frontBrake: 'none',
    extras: ['reflectors'],
  },
  balance: {
    ...small,
    frontBrake: 'none',
    rearBrake: 'none',
    extras: [],
    details: { 'gears.drive': 'none', 'gears.chainrings': '0' },
  },
  child: small,
  tandem: {
    ...mountain,
    fork: 'rigid',
    bar: 'flat',
    post: '27.2',
    extras: ['reflectors', 'bell'],
    details: { 'gears.chainrings': '3' },
  },
};
