/** What a plan must never say, and what must be shown good again after what: facts of the trade, held against any plan. */

import type { BikeFacts } from '../../src/engine/bike';
import { type Plan, staleAfter } from '../../src/engine/plan';

const has = (facts: BikeFacts, question: string, ...answers: readonly unknown[]): boolean => {
  const given = facts[question];
  return answers.some((answer) =>
    typeof given === 'object' ? given.some((one) => one === answer) : given === answer,
  );
};
const either = (facts: BikeFacts, name: string, ...answers: readonly unknown[]): boolean =>
  has(facts, `front.${name}`, ...answers) || has(facts, `rear.${name}`, ...answers);
const carbon = ['carbon', 'unknown'] as const;

/** A word that a step's title may use only on a bike that has the thing. Source: what the words mean. */
const wordsOfThings: readonly (readonly [word: RegExp, isThere: (facts: BikeFacts) => boolean])[] =
  [
    [
      /\b(chain(?! tug)|quick link)\b/i,
      (f) => has(f, 'gears.drive', 'chain') || has(f, 'kind', 'tandem'),
    ],
    [/\bbelt\b/i, (f) => has(f, 'gears.drive', 'belt')],
    [/\b(rotor|caliper|disc)\b/i, (f) => either(f, 'brake', 'hydraulic-disc', 'cable-disc')],
    [/\bcantilever/i, (f) => either(f, 'brake', 'cantilever')],
    [/\bcoaster/i, (f) => has(f, 'rear.brake', 'coaster')],
    [/\bhub brake/i, (f) => either(f, 'brake', 'roller', 'drum')],
    [/\bmudguard/i, (f) => has(f, 'extras', 'mudguards')],
    [/\bfront rack\b/i, (f) => has(f, 'extras', 'front-rack')],
    [/\bbell\b/i, (f) => has(f, 'extras', 'bell')],
    [/\bbasket/i, (f) => has(f, 'extras', 'basket')],
    [/\bstabiliser/i, (f) => has(f, 'extras', 'stabilisers')],
    [/\bchild seat/i, (f) => has(f, 'extras', 'child-seat-mount')],
    [/\bbottle cage/i, (f) => has(f, 'extras', 'bottle-cage')],
    [/\bchainguard/i, (f) => has(f, 'extras', 'chainguard')],
    [/\bpegs\b/i, (f) => has(f, 'extras', 'pegs')],
    [/\bbar ends\b/i, (f) => has(f, 'extras', 'bar-ends')],
    [/\bdetangler/i, (f) => has(f, 'extras', 'cable-detangler')],
    [/\bdynamo/i, (f) => has(f, 'front.hub', 'dynamo') || has(f, 'extras', 'dynamo-lights')],
    [/\bmotor/i, (f) => has(f, 'assist', 'mid-motor', 'hub-motor')],
    [/\bquill\b/i, (f) => has(f, 'steering.stem', 'quill')],
    [/\bfaceplate/i, (f) => has(f, 'steering.stem', 'threadless')],
    [/\bsteerer/i, (f) => has(f, 'steering.stem', 'threadless', 'integrated')],
    [/\bbar tape\b/i, (f) => has(f, 'steering.grip', 'tape')],
    [
      /\bderailleur/i,
      (f) =>
        has(f, 'gears.kind', 'derailleur', 'electronic-derailleur') ||
        has(f, 'gears.chainrings', 2, 3),
    ],
    [/\bhub gear/i, (f) => has(f, 'gears.kind', 'hub')],
    [/\belectronic/i, (f) => has(f, 'gears.kind', 'electronic-derailleur')],
    [/\b(crank|pedal)/i, (f) => !has(f, 'gears.drive', 'none')],
    [/\b(tubeless|sealant)\b/i, (f) => either(f, 'tyreFit', 'tubeless')],
    [/\bhookless/i, (f) => either(f, 'hookless', true)],
    [/\bthru-axle/i, (f) => either(f, 'axle', 'thru-axle')],
    [/\bquick release/i, (f) => either(f, 'axle', 'quick-release')],
    [/\baxle nuts/i, (f) => either(f, 'axle', 'nutted')],
    [/\bdropper/i, (f) => has(f, 'seat.post', 'dropper-cable', 'dropper-hydraulic')],
    [/\bsuspension post/i, (f) => has(f, 'seat.post', 'suspension')],
    [/\bshock/i, (f) => has(f, 'frame.shock', 'air', 'coil')],
    [/\b(stoker|captain|timing chain)/i, (f) => has(f, 'kind', 'tandem')],
    [/\b(unfold|frame hinge)/i, (f) => has(f, 'kind', 'folding')],
    [/\b(load bed|long tail|steering rod)/i, (f) => has(f, 'kind', 'cargo')],
    [
      /\bcarbon/i,
      (f) =>
        ['frame.material', 'fork.steerer', 'steering.barMaterial', 'seat.postMaterial'].some(
          (part) => has(f, part, ...carbon),
        ),
    ],
    [
      /\bcompound/i,
      (f) =>
        ['frame.material', 'fork.steerer', 'steering.barMaterial', 'seat.postMaterial'].some(
          (part) => has(f, part, ...carbon),
        ),
    ],
  ];

/** Steps that speak of what the bike does not have. */
export function misplacedIn(plan: Plan, facts: BikeFacts): readonly string[] {
  return plan.steps.flatMap(({ id, title }) =>
    wordsOfThings
      .filter(([word, isThere]) => word.test(title) && !isThere(facts))
      .map(([word]) => `${id} speaks of ${word.source}`),
  );
}

/** Every pedal on the left and the English right-hand cup; no other thread of a build. Source: common practice, no source; ISO 6696 (from memory). */
const leftHandedJoints = /^((captain-)?left-pedal|drive-side-cup-english)$/;

export function wrongHandsIn(plan: Plan): readonly string[] {
  return plan.steps.flatMap(({ joint }) => {
    if (joint === undefined) return [];
    const hand = leftHandedJoints.test(joint.id) ? 'left' : 'right';
    return joint.hand === hand ? [] : [`${joint.id} turns ${joint.hand}-handed`];
  });
}

const frontAxle = [
  'close-front-quick-release',
  'front-axle-nuts',
  'front-thru-axle',
  'front-thru-axle-lever',
];
const rearAxle = [
  'close-rear-quick-release',
  'rear-axle-nuts',
  'rear-thru-axle',
  'rear-thru-axle-lever',
];

/** A joint whose work what comes later may upset, what upsets it, and what shows it good again. Source: common practice, no source. */
const rechecks: readonly (readonly [
  step: string,
  upsetBy: readonly string[],
  shown: readonly string[],
])[] = [
  ['front-rotor', frontAxle, ['front-disc-rub']],
  ['rear-rotor', rearAxle, ['rear-disc-rub']],
  ['front-caliper-mount', frontAxle, ['front-disc-rub']],
  ['rear-caliper-mount', rearAxle, ['rear-disc-rub']],
  ['front-brake-arms', ['front-pads', 'front-brake-cable'], ['front-brake-centre']],
  ['rear-brake-arms', ['rear-pads', 'rear-brake-cable'], ['rear-brake-centre']],
  ['front-brake-fixing', ['front-brake-cable'], ['front-brake-centre']],
  ['rear-brake-fixing', ['rear-brake-cable'], ['rear-brake-centre']],
  ['front-pads', ['front-brake-cable'], ['front-brake-centre']],
  ['rear-pads', ['rear-brake-cable'], ['rear-brake-centre']],
  ['faceplate', ['steerer-clamp'], ['bar-alignment']],
  ['quill-bar-clamp', ['quill-wedge'], ['bar-alignment']],
  [
    'steerer-clamp',
    ['headset-preload', 'front-caliper-mount', 'front-brake-centre'],
    ['headset-play', 'column-play'],
  ],
  ['rear-axle-nuts', ['chain-tugs'], ['chain-slack', 'belt-tension']],
  ['seat-post-clamp', ['fit-seat-post', 'fit-seat-post-carbon'], ['seat-post-insertion']],
  ['brake-levers', ['shifter-clamp', 'front-brake-cable', 'rear-brake-cable'], ['brake-hold']],
];

/** Joints that are upset and never shown good again after it, so that nobody would know. */
export function recheckFaultsIn(plan: Plan): readonly string[] {
  const position = new Map(plan.steps.map(({ id }, index) => [id, index]));
  return rechecks.flatMap(([step, upsetBy, shown]) => {
    const upsets = upsetBy.flatMap((id) => position.get(id) ?? []);
    const candidates = shown.filter((id) => position.has(id));
    if (!position.has(step) || upsets.length === 0) return [];
    const last = Math.max(position.get(step) ?? 0, ...upsets);
    const stale = staleAfter(plan, [step]);
    const isShown = candidates.some((id) => (position.get(id) ?? 0) > last && stale.includes(id));
    return isShown ? [] : [`${step} is not shown good after ${upsetBy.join(', ')}`];
  });
}
