/** How long a whole tool board takes: a set point for each of 1,000 joints on each of 20 wrenches, and the board ranked for each joint. */

import { type Figure, planSetPoint, rankWrenches, type Wrench } from '../../src/engine/torque';
import { newtonMetres } from '../../src/engine/units';
import { seededRandom } from '../support/seeded-random';
import { TODAY, wrench } from '../support/wrenches';
import { medianOf, said } from './quantiles';
import { alternately } from './rounds';

const joints = 1000;
const warmUp = 200;

type Limits = Pick<Figure, 'min' | 'max' | 'target'>;

const random = seededRandom(20_261_125);
const figures = Array.from({ length: joints }, anyFigure);
const board = toolBoard();

const ofJoint = (round: number) => figures[round % joints] ?? {};
const plansOf = (figure: Limits) =>
  board.map((one) => planSetPoint({ figure, wrench: one, on: TODAY }));
const rank = (figure: Limits) => rankWrenches(figure, board, TODAY);

// One joint a round: over before the machine turns to something else.
const [cold = []] = alternately({ rounds: 20, warmUp: 0 }, (round) => rank(ofJoint(round)));
const [plans = [], rankings = []] = alternately(
  { rounds: joints, warmUp },
  (round) => plansOf(ofJoint(round)),
  (round) => rank(ofJoint(round)),
);
const covered = figures.flatMap(plansOf).filter(({ ok }) => ok).length;

console.log(`${joints} joints × ${board.length} wrenches, ${covered} set points covered`);
console.log(said(`one joint on each of ${board.length} wrenches`, plans));
console.log(said('the board ranked for one joint', rankings));
console.log(said('  the very first ones, not yet compiled', cold));
console.log(`all ${joints} joints: set points ${total(plans)} ms, rankings ${total(rankings)} ms`);
const aSecond = (1000 * board.length) / medianOf(plans);
console.log(`${Math.round(aSecond).toLocaleString('en')} set points a second`);

function total(times: readonly number[]): string {
  return (medianOf(times) * joints).toFixed(0);
}

/** Of the four kinds in turn, from a brake lever's clamp to a crank bolt. */
function anyFigure(_: unknown, index: number): Limits {
  const low = 2 * 25 ** random();
  const target = newtonMetres(low);
  const high = newtonMetres(low * (1.1 + 0.4 * random()));
  const kinds: readonly Limits[] = [
    { min: target, max: high },
    { max: high },
    { min: target },
    { target },
  ];
  return kinds[index % kinds.length] ?? { target };
}

/** Ten kinds of wrench, each with a class deviation and again with a certificate of three points. */
function toolBoard(): readonly Wrench[] {
  const kinds: readonly Partial<Wrench>[] = [
    { lowest: 1, highest: 10, increment: 0.1 },
    { lowest: 2, highest: 25, increment: 0.5 },
    { lowest: 5, highest: 60, increment: 1 },
    { lowest: 20, highest: 120, increment: 1 },
    { lowest: 5, highest: 5, increment: 1, class: 'B' },
    { lowest: 6, highest: 6, increment: 1, class: 'B' },
    { lowest: 4, highest: 20, increment: 1, type: 'I', class: 'A' },
    { lowest: 0.3, highest: 30, increment: 0.01, type: 'I', class: 'C' },
    { lowest: 20, highest: 200, increment: 2, unit: 'lbf·in' },
    { lowest: 5, highest: 75, increment: 0.5, unit: 'lbf·ft' },
  ];
  return kinds.flatMap((kind, index) => {
    const { lowest = 1, highest = 1 } = kind;
    const points = [0.2, 0.6, 1].map((share) => ({
      at: Math.max(lowest, highest * share),
      deviation: 0.03 * (random() - 0.5),
      uncertainty: 0.01,
    }));
    const tested = lowest === highest ? points.slice(-1) : points;
    return [
      wrench({ ...kind, id: `class-${index}` }),
      wrench({ ...kind, id: `certificate-${index}`, certificate: { points: tested } }),
    ];
  });
}
