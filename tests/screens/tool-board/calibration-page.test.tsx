/** A calibration is typed on the pad, judged point by point at once, and kept; outside, it asks what was done. */

import { screen, within } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, test } from 'vitest';
import { CalibrationPage } from '../../../src/screens/tool-board/calibration-page';
import type { WrenchTool } from '../../../src/state';
import { words } from '../../../src/words';
import { boardWords } from '../../../src/words/board-words';
import { fit, type ShownBoard, showBoard } from '../../support/shown-board';

const { calibration } = boardWords;

let user: UserEvent;
let board: ShownBoard;

beforeEach(async () => {
  user = userEvent.setup();
  board = await showBoard(<CalibrationPage id="B" />, [fit]);
});

const region = (title: string) => within(screen.getByRole('region', { name: title }));

async function type(title: string, values: readonly string[], column = calibration.tester('N·m')) {
  for (const [index, value] of values.entries()) {
    const at = ['2', '8.4', '14'][index] ?? '';
    await user.click(
      region(title).getByRole('button', {
        name: (name) => name.startsWith(`${calibration.cell(column, at)}:`),
      }),
    );
    const pad = within(region(title).getByRole('group'));
    for (const key of value) await user.click(pad.getByRole('button', { name: key }));
  }
}

const keep = () =>
  user.click(screen.getByRole('button', { name: new RegExp(`^${calibration.keep}`) }));

function kept(): WrenchTool {
  const [tool] = board.app.tools.getState().rows;
  if (tool?.kind !== 'wrench') throw new Error('the wrench is gone');
  return tool;
}

describe('what is typed', () => {
  const drafts = () => Object.keys(board.app.session.getState().drafts);

  test('is there again after the screen was left, until it is saved or given up', async () => {
    await type(calibration.found, ['2.02']);
    board.leave();
    board.show(<CalibrationPage id="B" />);
    expect(
      region(calibration.found).getByText('−0.99 %, inside: bolts come out tighter than it says'),
    ).toBeVisible();
    await user.click(screen.getByRole('button', { name: words.app.cancel }));
    expect(drafts()).toEqual([]);
  });
});

describe('a certificate inside', () => {
  test('is judged point by point while it is typed, and kept as it came', async () => {
    await type(calibration.found, ['2.02']);
    expect(
      region(calibration.found).getByText('−0.99 %, inside: bolts come out tighter than it says'),
    ).toBeVisible();
    expect(region(calibration.found).getAllByText(calibration.verdict.missing)).toHaveLength(2);
    await type(calibration.found, ['', '8.3', '14.2']);
    expect(screen.getByRole('status')).toHaveTextContent('Every point is inside ± 4 %.');
    await user.type(screen.getByLabelText(calibration.reference), 'Q-204');
    await user.click(screen.getByRole('radio', { name: calibration.goings['as-it-is'] }));
    await keep();
    await expect.poll(() => kept().wrench.calibratedOn).toBe('2026-11-25');
    expect(kept().wrench).toMatchObject({
      dueOn: '2027-11-25',
      operations: 0,
      certificate: {
        reference: 'Q-204',
        points: [
          { at: 2, deviation: -0.009901 },
          { at: 8.4, deviation: 0.012048 },
          { at: 14, deviation: -0.014085 },
        ],
      },
    });
    await expect.poll(() => board.went.at(-1)).toBe('/tool-board/B');
  });

  test('may be given as signed deviations, with the sign on the pad', async () => {
    await user.click(screen.getByRole('radio', { name: calibration.asDeviation }));
    await type(calibration.found, ['−1.5', '0', '2'], calibration.deviation);
    expect(
      region(calibration.found).getByText('−1.5 %, inside: bolts come out tighter than it says'),
    ).toBeVisible();
    await user.click(screen.getByRole('radio', { name: calibration.goings['as-it-is'] }));
    await keep();
    await expect.poll(() => kept().wrench.certificate?.points?.[0]?.deviation).toBe(-0.015);
  });

  test('that only says it passed needs no points', async () => {
    await user.click(screen.getByRole('radio', { name: new RegExp(calibration.passedOnly) }));
    expect(screen.queryByRole('region', { name: calibration.found })).toBeNull();
    await user.click(screen.getByRole('radio', { name: calibration.goings['as-it-is'] }));
    await keep();
    await expect.poll(() => kept().wrench.calibratedOn).toBe('2026-11-25');
    expect(kept().wrench.certificate).toBeUndefined();
  });
});

describe('a certificate outside', () => {
  beforeEach(() => type(calibration.found, ['2.01', '7.85', '14']));

  test('says so at once, where, and what follows; it cannot go on as it came', async () => {
    expect(
      region(calibration.found).getByText('+7.01 %, outside: bolts come out looser than it says'),
    ).toBeVisible();
    expect(screen.getByRole('alert')).toHaveTextContent(/^Outside ± 4 % at 8\.4 N·m\./);
    expect(screen.queryByRole('radio', { name: calibration.goings['as-it-is'] })).toBeNull();
    await keep();
    expect(screen.getByText(calibration.choose)).toBeVisible();
    expect(kept().wrench.calibratedOn).toBe('2026-07-05');
  });

  test('asks what was done and for the points it left with', async () => {
    await user.click(screen.getByRole('radio', { name: calibration.goings.adjusted }));
    await keep();
    expect(screen.getByText(calibration.incomplete)).toBeVisible();
    await type(calibration.left, ['2', '8.4', '14']);
    await keep();
    expect(await screen.findByText(words.refusal({ code: 'reason-missing' }))).toBeVisible();
    await user.click(screen.getByRole('button', { name: calibration.howQuick[0] }));
    await keep();
    await expect.poll(() => kept().wrench.calibratedOn).toBe('2026-11-25');
    expect(kept().history?.at(-1)).toMatchObject({
      kind: 'calibrated',
      foundOutside: true,
      adjusted: { how: calibration.howQuick[0] },
    });
  });

  test('may leave it out of service', async () => {
    await user.click(screen.getByRole('radio', { name: calibration.goings.away }));
    await keep();
    await expect.poll(() => kept().wrench.condition).toBe('away');
    expect(kept().wrench.calibratedOn).toBe('2026-07-05');
  });
});
