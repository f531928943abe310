import { expect, test } from 'vitest';
import { figureFor, layoutOf, nextPass, stepById } from '../../../src/engine/job';
import { figureSchema } from '../../../src/engine/torque';
import { doing, opened } from '../../support/given-when-then';
import {
  contentsChecked,
  frozen,
  nextTowards,
  printedFigure,
  smallPlan,
  stepDone,
} from '../../support/small-job';

const documented = figureSchema.parse({
  min: 5,
  max: 6,
  source: { kind: 'document', reference: 'page 4' },
});
const plan = frozen({ figures: { 'stem-bolts': documented } });
const start = stepDone(contentsChecked(opened(plan)), 'clamp');
const stem = stepById(start.state, 'stem') ?? plan.steps[0];
if (stem === undefined) throw new Error('the plan has steps');

test('[J8] what was read on this very part comes before what the shop knew', () => {
  expect(figureFor(start.state, 'stem-bolts')).toEqual(documented);
  const read = printedFigure(4, 5);
  const entered = doing(start, { kind: 'enter-figure', joint: 'stem-bolts', figure: read });
  expect(figureFor(entered.state, 'stem-bolts')).toEqual(read);
  expect(figureFor(start.state, 'front-axle')).toBeUndefined();
});

test('[J8] the passes come in turn, and stay at the last', () => {
  expect(layoutOf(stem)).toEqual({ shape: 'rectangle', bolts: 4 });
  let job = start;
  const seen: unknown[] = [];
  for (let turn = 0; turn < 3; turn += 1) {
    const next = nextPass(job.state, stem);
    seen.push(next.ok && [next.value.pass.pass, next.value.of, next.value.pass.kind]);
    job = doing(job, nextTowards(job, 'stem'));
  }
  // Half, full, once round: ASME PCC-1 (from memory).
  expect(seen).toEqual([
    [1, 3, 'rising'],
    [2, 3, 'full'],
    [3, 3, 'last round'],
  ]);
  const after = nextPass(job.state, stem);
  expect(after.ok && after.value.pass.pass).toBe(3);
});

test('[J8] a step without a joint, and a joint without a figure, have no pass', () => {
  const { state } = contentsChecked(opened(smallPlan));
  const clamp = stepById(state, 'clamp') ?? stem;
  expect(nextPass(state, clamp)).toEqual({
    ok: false,
    refusal: { code: 'joint-unknown', step: 'clamp' },
  });
  expect(nextPass(state, stem)).toEqual({
    ok: false,
    refusal: { code: 'figure-missing', joint: 'stem-bolts' },
  });
});
