import { describe, expect, test } from 'vitest';
import { type EventOf, nextPass, standingSignature, stepById } from '../../../src/engine/job';
import {
  doing,
  eventsOf,
  logged,
  met,
  opened,
  petra,
  refusalOf,
  signing,
} from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  nextTowards,
  printedFigure,
  smallPlan,
  stepDone,
  stepsDone,
  walked,
} from '../../support/small-job';

describe('an unknown kind', () => {
  test.each<[kind: string]>([['wheel-sung-to'], ['constructor'], ['toString'], ['__proto__']])(
    '[J3] adds nothing and stays in the log: %s',
    (kind) => {
      const before = stepDone(opened(smallPlan), 'clamp');
      const later = logged(before, { kind, v: 7 });
      expect(later.state).toEqual(before.state);
      expect(met(later, later).entries.at(-1)?.event.kind).toBe(kind);
      expect(met(later, later).state).toEqual(before.state);
    },
  );
});

describe('two tablets apart', () => {
  const start = doing(stepDone(contentsChecked(opened(smallPlan)), 'clamp'), {
    kind: 'enter-figure',
    joint: 'stem-bolts',
    figure: printedFigure(5, 6),
  });

  test('[J8] that both made the first pass have not made the second', () => {
    const first = nextTowards(start, 'stem');
    const joined = met(doing(start, first), doing(start, first, petra, 'tablet-b'));
    const step = stepById(joined.state, 'stem');
    const next = step && nextPass(joined.state, step);
    expect(next?.ok && next.value.pass.pass).toBe(2);
  });

  test('[J8] a new figure makes the passes of the old one void', () => {
    const one = doing(start, nextTowards(start, 'stem'));
    const figure = printedFigure(6, 8);
    const changed = doing(one, { kind: 'enter-figure', joint: 'stem-bolts', figure });
    expect(changed.state.joints['stem-bolts']).toMatchObject({ figure, passes: [] });
    expect(nextTowards(changed, 'stem')).toMatchObject({ pass: 1 });
  });

  test('[J17] a signature does not cover rework that its signer had not seen', () => {
    const ready = walked(built(opened(smallPlan)));
    const sign = { kind: 'sign-built', signing: signing(ready, 'built') } as const;
    const reopen = { kind: 'reopen-step', step: 'stem', reason: 'A creak.' } as const;
    // By tablet: the rework stands before the signature in one log, after it in the other.
    const before = met(
      doing(ready, reopen, petra, 'tablet-a'),
      doing(ready, sign, undefined, 'tablet-b'),
    );
    const behind = met(
      doing(ready, reopen, petra, 'tablet-b'),
      doing(ready, sign, undefined, 'tablet-a'),
    );
    for (const { state } of [before, behind]) {
      expect(state.signatures).toHaveLength(1);
      expect(standingSignature(state, 'built')).toBeUndefined();
    }
  });
});

describe('who is a builder', () => {
  test('[J16] everyone who did a step, a pass or its measure, and who signed as built', () => {
    const clamped = stepDone(contentsChecked(opened(smallPlan)), 'clamp', { ...petra, by: 'a' });
    const measured = doing(clamped, nextTowards(clamped, 'post'), { ...petra, by: 'b' });
    const tightened = stepDone(measured, 'stem', { ...petra, by: 'c' });
    expect(tightened.state.builders).toEqual(['a', 'b', 'c']);
    const signed = logged(
      tightened,
      eventsOf(walked(built(tightened)), {
        kind: 'sign-built',
        signing: signing(walked(built(tightened)), 'built'),
      })[0] as EventOf<'signed'>,
      { by: 'd' },
    );
    expect(signed.state.builders).toContain('d');
  });

  test('[J16] not the second checker, who measures again what was signed', () => {
    const signed = builtAndSigned();
    const again = { kind: 'take-measure', at: 'post', measure: 'insertion', value: 80 } as const;
    const measured = doing(signed, again, petra);
    expect(measured.state.builders).toEqual(['imre']);
    const check = { kind: 'sign-checked', signing: signing(measured, 'checked') } as const;
    expect(refusalOf(measured, check).code).toBe('builder-cannot-check');
    expect(() => doing(measured, check, petra)).not.toThrow();
  });
});

describe('a step', () => {
  test('[J24] done again keeps who did it before, and what disturbed it', () => {
    const done = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'stem', 'levers']);
    const reopened = doing(done, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
    const again = stepsDone(reopened, ['stem', 'levers'], petra);
    expect(again.state.steps.levers).toMatchObject({
      standing: 'done',
      done: [{ by: 'imre' }, { by: 'petra' }],
      disturbed: { from: 'stem', reason: 'A creak.' },
    });
  });
});
