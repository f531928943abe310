/** Features that no bike has together: a description that holds such a pair was entered wrongly. */

import type { Bike } from './bike.schema';
import { type BikeFacts, factsOf } from './bike-facts';

type Answer = string | number | boolean;

export interface Feature {
  readonly question: string;
  readonly answer: Answer;
}

export interface Contradiction {
  readonly one: Feature;
  readonly other: Feature;
}

type Side = readonly [question: string, ...answers: readonly Answer[]];

const derailleurs = ['derailleur', 'electronic-derailleur'] as const;
const nutThreads = ['M9×1', 'M10×1', '5/16 in × 26', '3/8 in × 26', 'M12×1.25', 'M14×1'] as const;
const thruThreads = ['M12×1', 'M12×1.5', 'M12×1.75', 'M15×1.5'] as const;
const ownDrive = [
  'road',
  'gravel',
  'mountain-hardtail',
  'mountain-full-suspension',
  'town',
  'trekking',
  'folding',
  'cargo',
  'bmx',
  'child',
  'tandem',
] as const;

/** Each row: no bike has an answer of the left with an answer of the right. Source: common practice, no source. */
const never: readonly (readonly [one: Side, other: Side])[] = [
  [
    ['rear.brake', 'coaster'],
    ['gears.kind', ...derailleurs],
  ],
  [
    ['rear.brake', 'coaster'],
    ['rear.axle', 'quick-release', 'thru-axle'],
  ],
  [
    ['gears.drive', 'belt'],
    ['gears.kind', ...derailleurs],
  ],
  [
    ['gears.drive', 'belt'],
    ['gears.chainrings', 2, 3],
  ],
  [
    ['gears.drive', 'none'],
    ['kind', ...ownDrive],
  ],
  [
    ['kind', 'balance'],
    ['assist', 'mid-motor'],
  ],
  [
    ['kind', 'balance'],
    ['rear.brake', 'coaster'],
  ],
  [
    ['kind', 'balance'],
    ['extras', 'chainguard'],
  ],
  [
    ['gears.chainrings', 0],
    ['gears.drive', 'chain', 'belt'],
  ],
  [
    ['gears.kind', 'single-speed'],
    ['gears.chainrings', 2, 3],
  ],
  [
    ['gears.kind', 'single-speed'],
    ['gears.speeds', 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14],
  ],
  [
    ['gears.hanger', 'on-axle'],
    ['rear.axle', 'thru-axle'],
  ],
  [
    ['gears.tension', 'slotted-dropouts', 'tugs'],
    ['rear.axle', 'thru-axle'],
  ],
  [
    ['cranks.fixing', 'one-piece'],
    ['cranks.bottomBracket', 'english', 'italian', 'press-fit'],
  ],
  [
    ['cranks.bottomBracket', 'one-piece'],
    ['cranks.fixing', 'square-taper', 'splined', 'pinch-bolts'],
  ],
  [
    ['cranks.fixing', 'one-piece'],
    ['assist', 'mid-motor'],
  ],
  [
    ['assist', 'none', 'mid-motor'],
    ['front.hub', 'motor'],
  ],
  [
    ['assist', 'none', 'mid-motor'],
    ['rear.hub', 'motor'],
  ],
  [
    ['front.hub', 'motor'],
    ['rear.hub', 'motor'],
  ],
  [
    ['front.hub', 'motor'],
    ['front.brake', 'roller', 'drum'],
  ],
  [
    ['assist', 'none'],
    ['extras', 'motor-lights'],
  ],
  [
    ['steering.stem', 'quill'],
    ['steering.headset', 'cups', 'drop-in'],
  ],
  [
    ['steering.headset', 'threaded'],
    ['steering.stem', 'threadless', 'integrated'],
  ],
  [
    ['steering.stem', 'quill'],
    ['fork.steerer', 'carbon'],
  ],
  [
    ['steering.stem', 'quill'],
    ['steering.routing', 'through-headset'],
  ],
  [
    ['steering.stem', 'integrated'],
    ['steering.stemAngle', 'adjustable'],
  ],
  [
    ['steering.plug', 'star-nut'],
    ['fork.steerer', 'carbon'],
  ],
  [
    ['seat.postShape', 'not-round'],
    ['seat.post', 'suspension', 'dropper-cable', 'dropper-hydraulic'],
  ],
  [
    ['frame.load', 'front-load', 'long-tail'],
    ['kind', ...ownDrive.filter((kind) => kind !== 'cargo'), 'balance'],
  ],
  [
    ['extras', 'cable-detangler'],
    ['rear.brake', 'hydraulic-disc', 'coaster', 'roller', 'drum', 'none'],
  ],
  ...(['front', 'rear'] as const).flatMap((wheel) => [
    [
      [`${wheel}.axle`, 'thru-axle'],
      [`${wheel}.axleThread`, ...nutThreads],
    ] as const,
    [
      [`${wheel}.axle`, 'nutted', 'quick-release'],
      [`${wheel}.axleThread`, ...thruThreads],
    ] as const,
  ]),
];

/** Every pair of answers that the description gives and no bike has; empty for a bike that can be. */
export function contradictionsIn(bike: Bike): readonly Contradiction[] {
  const facts = factsOf(bike);
  const motorless = bike.assist === 'hub-motor' && !hasMotorHub(facts);
  return [
    ...never.flatMap(([one, other]) => {
      const left = given(facts, one);
      const right = given(facts, other);
      return left && right ? [{ one: left, other: right }] : [];
    }),
    ...(motorless
      ? [
          {
            one: { question: 'assist', answer: 'hub-motor' },
            other: { question: 'rear.hub', answer: 'plain' },
          },
        ]
      : []),
  ];
}

/** Whether no bike has both of these. */
export function areAtOdds(one: Feature, other: Feature): boolean {
  return never.some(
    ([left, right]) =>
      (isAmong(one, left) && isAmong(other, right)) ||
      (isAmong(other, left) && isAmong(one, right)),
  );
}

function isAmong({ question, answer }: Feature, [asked, ...answers]: Side): boolean {
  return question === asked && answers.includes(answer);
}

function hasMotorHub(facts: BikeFacts): boolean {
  return facts['front.hub'] === 'motor' || facts['rear.hub'] === 'motor';
}

function given(facts: BikeFacts, [question, ...answers]: Side): Feature | undefined {
  const given = facts[question];
  const answer = answers.find((one) =>
    typeof given === 'object' ? given.some((has) => has === one) : given === one,
  );
  return answer === undefined ? undefined : { question, answer };
}
