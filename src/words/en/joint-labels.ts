/** Sentences beside a joint at the stand, in English: grease, readings of the wrench, and figures side by side. */

import type { GreaseAdviceRefusal } from '../../engine/plan';
import type { FigureStanding, wrenchReasons } from '../../engine/torque';
import { figure, numbered } from './writing';

const percent = (share: number) => figure(share * 100, 0);

/** Why nothing is computed, by code: one line each. */
const nothingComputed: {
  readonly [Code in GreaseAdviceRefusal['code']]: (
    facts: Extract<GreaseAdviceRefusal, { readonly code: Code }>,
  ) => string;
} = {
  'material-not-computed': ({ material }) =>
    material === 'carbon'
      ? 'Nothing is computed here: carbon is part of this joint, and a clamping force says nothing about what carbon bears.'
      : 'Nothing is computed here: the bike’s description does not say what this bolt holds.',
  'preparation-not-computed': () =>
    'Nothing is computed here: threadlocker and compound are neither dry nor greased.',
  'thread-not-one': ({ thread }) =>
    `Nothing is computed here: ${thread} is not one metric thread of the tables.`,
  'thread-not-in-table': () => 'Nothing is computed here: this thread is not in the tables.',
  'bolt-stamp-missing': () =>
    'Nothing is computed until the stamp is picked: a bolt without one has no known strength.',
  'property-class-unknown': () => 'Nothing is computed here: this stamp is not in the tables.',
  'bearing-impossible': () => 'Nothing is computed here: this size of head is not in the tables.',
};

export const jointLabels = {
  grease: {
    title: 'Why grease matters',
    stamp: 'Stamp on the bolt’s head',
    prompt: 'Look at the head',
    noStamp: 'no stamp, or not readable',
    gain: (torque: number, thread: string, gain: number) =>
      `At the same ${figure(torque, 2)} N·m, ${thread} clamps about ${percent(gain - 1)} % harder greased than dry.`,
    share: (stamp: string, greased: Shares, dry: Shares) =>
      `That is ${percent(greased.lowShare)}–${percent(greased.highShare)} % of what a bolt stamped ${stamp} bears without lasting stretch; dry, ${percent(dry.lowShare)}–${percent(dry.highShare)} %.`,
    over: 'More than 100 %: a bolt that is more slippery than the figure counts on stretches for good.',
    advice:
      'An estimate of what friction does (VDI 2230), never a specification. Prepare the thread as the part’s maker says.',
    dry: 'Dry',
    greased: 'Greased',
    limit: 'stretches for good',
    picture: (dry: Shares, greased: Shares) =>
      `Dry the bolt reaches ${percent(dry.lowShare)}–${percent(dry.highShare)} % of the load it bears, greased ${percent(greased.lowShare)}–${percent(greased.highShare)} %.`,
    nothing: (refusal: GreaseAdviceRefusal) =>
      (nothingComputed[refusal.code] as (facts: GreaseAdviceRefusal) => string)(refusal), // the table is complete
    noFigure: 'Nothing is computed yet: the figure comes first.',
  },
  /** Why a wrench that can do the joint stands where it stands; the others say why they cannot. */
  wrench: {
    reasons: {
      'keeps-the-joint-inside': 'surely inside',
      'middle-of-its-scale': 'used well within its scale',
      'near-the-end-of-its-scale': 'used near the end of its scale, where it is least sure',
      'set-once-for-all': 'set once for all: nothing to turn wrong',
      'in-another-unit': 'its scale is in another unit than the part',
      'little-room': 'little room on either side',
      'due-today': 'due for calibration today: its last day',
    } satisfies Readonly<Record<(typeof wrenchReasons)[number], string>>,
  },
  figures: {
    title: (count: number) =>
      count === 1
        ? 'The one figure known'
        : `${count === 2 ? 'Both' : `All ${numbered(count)}`} figures known, side by side`,
    titleContradicted: 'The figures known contradict each other',
    order:
      'In order of trust: on the part, in the maker’s document, approved by this shop, usual range. Where they contradict each other, ask the maker.',
    model: (said: string) => `${said}, for this model`,
    otherBike: 'read on the part of another bike of this model',
    approved: (name: string, date: string) => `approved by ${name} on ${date}`,
    entered: (said: string, name: string, date: string) =>
      `${said}; entered on this bike by ${name} on ${date}`,
    usual: (source: string) => `usual range, no specification (${source})`,
    standings: {
      rules: 'the most trusted',
      agrees: 'can be kept together with the most trusted',
      contradicts: 'contradicts the most trusted: no torque keeps both',
      'makes no sense': 'makes no sense as it stands: read it again',
    } satisfies Readonly<Record<FigureStanding, string>>,
    agreesUsual: 'agrees, but somebody has to stand for it by name',
    inUse: (standing: string) => `in use; ${standing}`,
    take: (value: string) => `Use ${value}`,
    partSays: (value: string) => `This part says ${value}`,
    inMyName: (value: string) => `Use ${value} in my name`,
  },
  reading: {
    title: 'Read from the wrench',
    next: (turn: number) => `Next: bolt ${turn}, as drawn.`,
    bringRight: (turn: number) => `Bring bolt ${turn} right, then read it again.`,
    all: 'Every bolt is read. Tap one to read it again.',
    row: (turn: number, text: string) => `Bolt ${turn}: ${text}`,
    again: (turn: number, text: string, judged: string) =>
      `Bolt ${turn}: ${text}, ${judged}. Read it again`,
    inside: 'surely inside',
    outside: 'surely outside',
    undecided: (inside: number | undefined) =>
      inside === undefined
        ? 'too near to tell'
        : `may be outside: ${Math.min(99, Math.max(1, Math.round((1 - inside) * 100)))} in 100`,
    rising: 'on the way up',
    risenTooFar: 'surely above the figure',
    record: (count: number) => (count === 1 ? 'Record the reading' : `Record ${count} readings`),
    takeBack: 'Take the last reading back',
    notRead: (text: string) =>
      `The wrench typed “${text}”, which is no single torque. Read it again.`,
    surplus: (text: string) =>
      `The wrench typed “${text}”, but every bolt is read. Tap the bolt that it belongs to, then read again.`,
  },
} as const;

interface Shares {
  readonly lowShare: number;
  readonly highShare: number;
}
