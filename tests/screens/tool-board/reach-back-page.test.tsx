/** The list of bikes in doubt: why, how far it is, who has them, joint by joint; and plainly when there are none. */

import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { ReachBackPage } from '../../../src/screens/tool-board/reach-back-page';
import type { App, BikeInDoubt, JointInDoubt, ReachedBack } from '../../../src/state';
import { words } from '../../../src/words';
import { boardWords } from '../../../src/words/board-words';
import { dropped, fit, showBoard, today } from '../../support/shown-board';
import { must, settled } from '../../support/test-app';

const { reachBack } = boardWords;

function joint(id: string, own: Partial<JointInDoubt> = {}): JointInDoubt {
  return {
    joint: id,
    step: id,
    name: id,
    class: 'A',
    on: '2026-11-13',
    figure: { min: 6, max: 8, source: { kind: 'part', printed: '6–8 N·m' } },
    onScale: 7,
    wrench: { unit: 'N·m' },
    low: 5.92,
    high: 5.92,
    probabilityOutside: 1,
    ...own,
  } as JointInDoubt; // as much of a joint as the list shows
}

const gone: BikeInDoubt = {
  job: 'job-1',
  make: 'Larkfell',
  model: 'Hardtail 29',
  frameNumber: 'LF29-203871',
  status: 'handed-over',
  handedOverAt: '2026-11-13T16:40:00+00:00',
  customer: { name: 'Jo Marlowe', contact: '01632 960041' },
  joints: [
    joint('Saddle clamp'),
    joint('Brake levers', { probabilityOutside: 0.31, low: 4.9, high: 5.4 }),
  ],
  calledBack: [],
};
const { customer: _, handedOverAt: __, ...bare } = gone;
const here: BikeInDoubt = {
  ...bare,
  job: 'job-2',
  frameNumber: 'OB7-510774',
  status: 'to-be-checked',
  joints: [joint('Rack', { class: 'C' })],
};

const found = [{ at: 8.4, deviation: 0.18 }];

async function show(reached: ReachedBack | 'never', own: (app: App) => Partial<App> = () => ({})) {
  const board = await showBoard(<ReachBackPage id="B" doubt="1" />, [fit], (app) => ({
    reachBackFor: async (tool, doubt, onProgress) => {
      onProgress?.(1, 3);
      expect([tool.id, doubt.key]).toEqual(['B', '1']);
      return reached === 'never' ? new Promise(() => undefined) : { ok: true, value: reached };
    },
    ...own(app),
  }));
  must(
    await board.app.calibrate({
      wrench: 'B',
      on: today,
      dueOn: '2027-11-25',
      found,
      adjusted: { how: 'Spring', points: [{ at: 8.4, deviation: 0 }] },
    }),
  );
  await settled();
  return board;
}

describe('the list', () => {
  test('says why, since when, and what was measured', async () => {
    await show({ bikes: [gone, here], looked: { bikes: 5, joints: 29 } });
    expect(
      await screen.findByText('Wrench B was found outside its tolerance on 25 November 2026.'),
    ).toBeVisible();
    expect(screen.getByText(/from its good calibration on 5 July 2026 until/)).toBeVisible();
    expect(screen.getByRole('table', { name: reachBack.measured })).toHaveTextContent('+18 %');
    expect(screen.getByRole('status')).toHaveTextContent(
      '3 joints on 2 bikes may be outside, of 29 joints on 5 bikes judged again.',
    );
  });

  test('has the bikes that have gone home before those still here, with whose they are', async () => {
    await show({ bikes: [gone, here], looked: { bikes: 5, joints: 29 } });
    const [first, second] = await screen.findAllByRole('listitem');
    expect(first).toHaveTextContent('LF29-203871 · Larkfell Hardtail 29');
    expect(first).toHaveTextContent('handed over 13 November 2026, Jo Marlowe, 01632 960041');
    expect(second).toHaveTextContent(/OB7-510774 .*to be checked/);
    const link = (row: HTMLElement | undefined) =>
      within(row ?? missing())
        .getByRole('link')
        .getAttribute('href');
    expect([link(first), link(second)]).toEqual(['/record/job-1', '/job/job-2']);
  });

  test('tells each joint’s figure, setting, where it may have ended and the chance in plain words', async () => {
    await show({ bikes: [gone], looked: { bikes: 1, joints: 2 } });
    const rows = await screen.findAllByRole('row');
    const texts = rows.map((row) => [...row.children].map((cell) => cell.textContent));
    expect(texts).toContainEqual([
      'Saddle clampcan hurt the rider; 13 November 2026',
      '6–8 N·m',
      '7 N·m',
      '5.92 N·m',
      'surely outside',
    ]);
    expect(texts).toContainEqual(expect.arrayContaining(['4.9–5.4 N·m', 'about 3 in 10']));
  });

  test('shows that it is at work, and how far', async () => {
    await show('never');
    expect(await screen.findByText('Judging joints again, 1 of 3 bikes')).toBeVisible();
  });

  test.each([
    ['no bike was tightened with it', { bikes: 0, joints: 0 }, reachBack.noneUsed],
    ['all are inside', { bikes: 2, joints: 9 }, reachBack.allInside(2, 9)],
  ])('is empty and says so plainly: %s', async (_, looked, sentence) => {
    await show({ bikes: [], looked });
    expect(await screen.findByText(sentence)).toBeVisible();
    expect(screen.queryByText(reachBack.caution)).toBeNull();
  });

  test('is printed under its own name', async () => {
    const printSheet = vi.fn();
    await show({ bikes: [gone], looked: { bikes: 1, joints: 2 } }, () => ({ printSheet }));
    await userEvent.click(await screen.findByRole('button', { name: reachBack.print }));
    expect(printSheet).toHaveBeenCalledWith(reachBack.title('B'));
  });

  test('of a wrench that nobody has measured says that nobody knows', async () => {
    await showBoard(<ReachBackPage id="E" doubt="condition" />, [dropped]);
    expect(await screen.findByText(reachBack.notMeasured)).toBeVisible();
    expect(await screen.findByText(reachBack.noneUsed)).toBeVisible();
  });

  test('that is not there is said not to be', async () => {
    await showBoard(<ReachBackPage id="B" doubt="7" />, [fit]);
    expect(await screen.findByText(words.app.nothingHere)).toBeVisible();
  });
});

describe('calling back', () => {
  const cause = 'Wrench B was found outside its tolerance on 25 November 2026.';
  const note = {
    kind: 'called-back',
    by: 'nobody-known',
    at: { claimed: '2026-11-25T11:05:00+00:00', zone: 'Europe/London' },
    doubt: '1',
    job: 'job-1',
    joints: ['saddle-clamp'],
  } as const;

  test('shows who called a bike back, when, and what was agreed', async () => {
    const said = 'Coming in on Friday. Told not to ride it.';
    const text = reachBack.recordText(cause, 'Saddle clamp, Brake levers', said);
    const calledBack = [{ ...note, how: 'record-amended', text }] as const;
    await show({ bikes: [{ ...gone, calledBack }], looked: { bikes: 1, joints: 2 } });
    const row = await screen.findByRole('listitem');
    expect(row).toHaveTextContent(/Called back: .*, 25 November 2026, 11:05\./);
    expect(row).toHaveTextContent(`Agreed: ${said}`);
    expect(row).not.toHaveTextContent('Joints in doubt');
  });

  test('shows that joints were reopened, where nobody was called', async () => {
    const text = reachBack.reopenReason(cause);
    const calledBack = [{ ...note, how: 'steps-reopened', text }] as const;
    await show({ bikes: [{ ...here, calledBack }], looked: { bikes: 1, joints: 1 } });
    const row = await screen.findByRole('listitem');
    expect(row).toHaveTextContent(/Joints reopened: .*, 25 November 2026, 11:05\./);
    expect(row).not.toHaveTextContent('Agreed');
  });

  test('shows a word that was written otherwise as it is', () => {
    expect(reachBack.agreedIn('Rang twice. No answer.')).toBe('Rang twice. No answer.');
  });

  test('a bike that has gone home needs a word on what was agreed', async () => {
    const callBack = vi.fn(async () => ({ ok: true, value: true }) as const);
    await show({ bikes: [gone], looked: { bikes: 1, joints: 2 } }, () => ({ callBack }));
    const user = userEvent.setup();
    await user.click(await screen.findByRole('button', { name: /^Note that it is called back/ }));
    const dialog = within(
      screen.getByRole('dialog', { name: reachBack.callBackTitle('LF29-203871') }),
    );
    await user.click(dialog.getByRole('button', { name: reachBack.callBackSave }));
    expect(dialog.getByRole('alert')).toHaveTextContent(words.refusal({ code: 'reason-missing' }));
    await user.click(dialog.getByRole('button', { name: reachBack.callBackQuick[0] }));
    await user.click(dialog.getByRole('button', { name: reachBack.callBackSave }));
    expect(callBack).toHaveBeenCalledWith({
      wrench: 'B',
      doubt: '1',
      job: 'job-1',
      joints: [
        { joint: 'Saddle clamp', step: 'Saddle clamp' },
        { joint: 'Brake levers', step: 'Brake levers' },
      ],
      text: 'Called back. Wrench B was found outside its tolerance on 25 November 2026. Joints in doubt: Saddle clamp, Brake levers. Coming in',
    });
  });

  test('a bike still here says what reopening does, and shows a refusal', async () => {
    const refusal = { code: 'job-on-hold', for: 'part', note: '' } as const;
    const callBack = vi.fn(async () => ({ ok: false, refusal }) as const);
    await show({ bikes: [here], looked: { bikes: 1, joints: 2 } }, () => ({ callBack }));
    const user = userEvent.setup();
    await user.click(await screen.findByRole('button', { name: /^Reopen these joints/ }));
    const dialog = within(
      screen.getByRole('dialog', { name: reachBack.reopenTitle('OB7-510774') }),
    );
    expect(dialog.getByText(reachBack.reopenMeans)).toBeVisible();
    await user.click(dialog.getByRole('button', { name: reachBack.reopenSave }));
    expect(await dialog.findByRole('alert')).toHaveTextContent(words.refusal(refusal));
  });
});

describe('a chance in words', () => {
  test.each([
    [1, 'surely outside'],
    [0.97, 'almost surely outside'],
    [0.5, 'about 5 in 10'],
    [0.94, 'about 9 in 10'],
    [0.06, 'about 1 in 10'],
    [0.04, 'small: less than 1 in 20'],
  ])('%s', (probability, text) => {
    expect(reachBack.chanceText(probability)).toBe(text);
  });
});

function missing(): never {
  throw new Error('no such row');
}
