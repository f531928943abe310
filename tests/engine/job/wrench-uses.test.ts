import { expect, test } from 'vitest';
import { stepById, type WrenchUse, wrenchUses } from '../../../src/engine/job';
import { doing, opened, type Played, petra } from '../../support/given-when-then';
import {
  contentsChecked,
  handedOver,
  nextTowards,
  printedFigure,
  smallPlan,
  stepDone,
  stepsDone,
} from '../../support/small-job';
import { wrench } from '../../support/wrenches';

const start = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'wheel']);
const tight = stepsDone(start, ['stem', 'axle', 'levers']);

const usesOf = ({ entries }: Played, id: string) => wrenchUses(entries, smallPlan, id);
const jointsOf = (uses: readonly WrenchUse[]) => uses.map(({ joint }) => joint);

test('[J32] every joint that the wrench tightened is there, with all that is needed to judge it again', () => {
  const uses = usesOf(tight, 'small');
  expect(jointsOf(uses)).toEqual(['stem-bolts', 'front-axle', 'lever-bolts']);
  const [stem, , levers] = uses;
  expect(stem).toMatchObject({
    step: 'stem',
    class: stepById(tight.state, 'stem')?.joint?.risk,
    by: 'imre',
    figure: printedFigure(5, 6),
    wrench: { id: 'small', unit: 'N·m' },
    goneOver: undefined,
  });
  expect(stem?.setPoint).toBeGreaterThan(5);
  expect(levers?.class).toBe('C');
  expect(usesOf(tight, 'large')).toEqual([]);
});

test('[J32] a joint begun but not brought up to its figure holds by nothing yet', () => {
  const begun = doing(start, nextTowards(start, 'stem'));
  const once = doing(begun, nextTowards(begun, 'stem'));
  expect(usesOf(once, 'small')).toEqual([]);
});

test('[J32] a loosened joint is there no more, and one that only relied on it stays', () => {
  const loosened = doing(tight, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
  expect(jointsOf(usesOf(loosened, 'small'))).toEqual(['front-axle', 'lever-bolts']);
});

test('[J32] tightened anew it holds by the wrench that did that', () => {
  const loosened = doing(tight, { kind: 'reopen-step', step: 'axle', reason: 'It rubs.' });
  const other = wrench({ id: 'other', increment: 0.1 });
  const anew = doing(loosened, { kind: 'make-pass', step: 'axle', pass: 1, wrench: other }, petra);
  expect(jointsOf(usesOf(anew, 'small'))).toEqual(['stem-bolts', 'lever-bolts']);
  expect(usesOf(anew, 'other')).toMatchObject([{ joint: 'front-axle', by: 'petra' }]);
});

test('[J32] gone over with another wrench it holds by both, and says so', () => {
  // The levers rely on the stem: they go stale, and only their last round is shown again.
  const loosened = doing(tight, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
  const again = stepDone(loosened, 'stem');
  const other = wrench({ id: 'other', increment: 0.1 });
  const over = doing(again, { kind: 'make-pass', step: 'levers', pass: 2, wrench: other });
  const levers = usesOf(over, 'small').find(({ joint }) => joint === 'lever-bolts');
  expect(levers?.goneOver).toMatchObject({ wrench: 'other' });
  expect(usesOf(over, 'other')).toMatchObject([{ joint: 'lever-bolts', goneOver: undefined }]);
});

test('[J32] handing the bike over changes nothing; without its plan a joint is taken for the worst', () => {
  const gone = handedOver();
  expect(jointsOf(usesOf(gone, 'small')).sort()).toEqual([
    'front-axle',
    'lever-bolts',
    'stem-bolts',
  ]);
  expect(wrenchUses(gone.entries, undefined, 'small').map((use) => use.class)).toEqual([
    'A',
    'A',
    'A',
  ]);
});
