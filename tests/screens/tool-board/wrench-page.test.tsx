/** One wrench: how it stands, what happened to it with who and why, and what was kept of each calibration. */

import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { WrenchPage } from '../../../src/screens/tool-board/wrench-page';
import { words } from '../../../src/words';
import { boardWords } from '../../../src/words/board-words';
import { dropped, fit, showBoard, today } from '../../support/shown-board';
import { must, settled } from '../../support/test-app';

const { toolBoard } = boardWords;

test('a wrench that is not on the board is said to be gone', async () => {
  await showBoard(<WrenchPage id="Z" />, [fit]);
  expect(screen.getByText(words.refusal({ code: 'tool-missing' }))).toBeVisible();
});

test('a drop is noted with its day and its reason, and stands in the history with who said so', async () => {
  const user = userEvent.setup();
  const { app } = await showBoard(<WrenchPage id="B" />, [fit]);
  expect(screen.getByText('Due 5 July 2027, in 222 days.')).toBeVisible();
  await user.click(screen.getByRole('button', { name: toolBoard.changeCondition }));
  const dialog = within(screen.getByRole('dialog', { name: toolBoard.conditionTitle('B') }));
  expect(dialog.getByRole('button', { name: toolBoard.conditionSave })).toBeDisabled();
  await user.click(dialog.getByRole('radio', { name: /^Dropped/ }));
  await user.click(dialog.getByRole('button', { name: toolBoard.conditionSave }));
  expect(await dialog.findByRole('alert')).toHaveTextContent(
    words.refusal({ code: 'reason-missing' }),
  );
  await user.click(dialog.getByRole('button', { name: toolBoard.quickReasons.dropped[0] }));
  await user.click(dialog.getByRole('button', { name: toolBoard.conditionSave }));
  expect(await screen.findByText('Dropped on 25 November 2026: Fell off the bench')).toBeVisible();
  expect(screen.getAllByText('Petra, 25 November 2026, 10:00')).toHaveLength(2);
  expect(screen.getByText('Dropped since 25 November 2026.')).toBeVisible();
  expect(screen.getByText(`${toolBoard.untilCalibrated}.`)).toBeVisible();
  expect(app.tools.getState().rows[0]).toMatchObject({ wrench: { condition: 'dropped' } });
});

test('dropped before anybody noted such things, it goes back into service only calibrated', async () => {
  const user = userEvent.setup();
  await showBoard(<WrenchPage id="E" />, [dropped]);
  await user.click(screen.getByRole('button', { name: toolBoard.changeCondition }));
  const dialog = within(screen.getByRole('dialog', { name: toolBoard.conditionTitle('E') }));
  await user.click(dialog.getByRole('radio', { name: /^In service/ }));
  await user.click(dialog.getByRole('button', { name: toolBoard.quickReasons['in service'][0] }));
  await user.click(dialog.getByRole('button', { name: toolBoard.conditionSave }));
  expect(await dialog.findByRole('alert')).toHaveTextContent(
    words.refusal({ code: 'wrench-needs-calibration', wrench: 'E' }),
  );
});

test('each calibration stays with its points, as it came and as it left', async () => {
  const { app } = await showBoard(<WrenchPage id="B" />, [fit]);
  const base = { wrench: 'B', on: today, dueOn: '2027-11-25' };
  must(await app.calibrate({ ...base, found: [{ at: 8.4, deviation: 0.01 }], reference: 'Q-1' }));
  must(
    await app.calibrate({
      ...base,
      found: [{ at: 8.4, deviation: 0.07, uncertainty: 0.005 }],
      adjusted: { how: 'Spring replaced', points: [{ at: 8.4, deviation: -0.002 }] },
    }),
  );
  await settled();
  expect(await screen.findByText('Put right: Spring replaced')).toBeVisible();
  expect(screen.getByText(/certificate Q-1, after 2870 operations/)).toBeVisible();
  const tables = screen.getAllByRole('table').map((table) => table.textContent);
  expect(
    tables.some((text) => text?.includes('+7 %: bolts come out looser than it says± 0.5 %outside')),
  ).toBe(true);
  expect(
    tables.some((text) => text?.includes('−0.2 %: bolts come out tighter than it saysinside')),
  ).toBe(true);
  expect(
    tables.some((text) => text?.includes('+1 %: bolts come out looser than it saysinside')),
  ).toBe(true);
});

test('its description is corrected without its calibration', async () => {
  const user = userEvent.setup();
  const { app } = await showBoard(<WrenchPage id="B" />, [fit]);
  await user.click(screen.getByRole('button', { name: toolBoard.correct }));
  const form = within(screen.getByRole('dialog', { name: toolBoard.correct }));
  expect(form.queryByLabelText(toolBoard.calibrated)).toBeNull();
  await user.clear(form.getByLabelText(toolBoard.description));
  await user.type(form.getByLabelText(toolBoard.description), 'Long click wrench');
  await user.click(form.getByRole('button', { name: toolBoard.save }));
  expect(await screen.findByRole('heading', { name: 'B · Long click wrench' })).toBeVisible();
  expect(app.tools.getState().rows[0]).toMatchObject({
    wrench: { calibratedOn: '2026-07-05', operations: 2870, highest: 14 },
  });
});
