/** The board says in words what may be used, what may not and why, and lets tools come, change and retire. */

import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { ToolBoard } from '../../../src/screens/tool-board/tool-board';
import { words } from '../../../src/words';
import { boardWords } from '../../../src/words/board-words';
import { dropped, fit, overdue, showBoard, worn } from '../../support/shown-board';

const { toolBoard } = boardWords;

function rowsUnder(title: string): readonly string[] {
  const section = screen.getByRole('heading', { name: title }).closest('section');
  if (section === null) throw new Error(`nothing under ${title}`);
  return within(section)
    .getAllByRole('listitem')
    .map((row) => row.textContent ?? '');
}

describe('the board', () => {
  test('says that it is empty, and how it is filled', async () => {
    await showBoard(<ToolBoard />, []);
    expect(screen.getByText(toolBoard.empty)).toBeVisible();
    expect(screen.getByText(toolBoard.noAdapters)).toBeVisible();
    expect(screen.getAllByRole('button', { name: toolBoard.add })).toHaveLength(2);
  });

  test('tells first what may not be used, and why', async () => {
    await showBoard(<ToolBoard />, [fit, overdue, worn, dropped]);
    const headings = screen.getAllByRole('heading', { level: 2 }).map((h) => h.textContent);
    expect(headings.indexOf(toolBoard.unfit)).toBeLessThan(headings.indexOf(toolBoard.wrenches));
    const [e, g, h] = rowsUnder(toolBoard.unfit);
    expect(e).toContain('Dropped');
    expect(e).toContain(toolBoard.untilCalibrated);
    expect(g).toContain('Overdue by 26 days, was due 30 October 2026');
    expect(h).toContain('5000 operations reached');
  });

  test('tells of a good one when it is due, how far it may be out, and its operations', async () => {
    await showBoard(<ToolBoard />, [fit, overdue]);
    const [b] = rowsUnder(toolBoard.wrenches);
    expect(b).toContain('2–14 N·m, within ± 4 %');
    expect(b).toContain('Due 5 July 2027, in 222 days');
    expect(b).toContain('2870 of 5000 operations');
  });

  test('names what has to be looked into', async () => {
    await showBoard(<ToolBoard />, [fit, dropped]);
    expect(rowsUnder(toolBoard.toLookInto)).toEqual([
      `Wrench E is marked dropped.${toolBoard.showBikes}`,
    ]);
    expect(screen.getByRole('link', { name: toolBoard.showBikes })).toHaveAttribute(
      'href',
      '/tool-board/E/bikes/condition',
    );
  });
});

describe('a tool', () => {
  test('that is a wrench is added with its scale and its calibration', async () => {
    const user = userEvent.setup();
    const { app } = await showBoard(<ToolBoard />, []);
    await user.click(screen.getAllByRole('button', { name: toolBoard.add })[0] ?? missing());
    const form = within(screen.getByRole('dialog', { name: toolBoard.add }));
    await user.click(form.getByRole('button', { name: toolBoard.save }));
    expect(form.getAllByRole('alert')[0]).toHaveTextContent(
      'Look again at “Name on the board”, “What it is”, “Lowest marked value”, “Highest marked value”, “Step of the scale”, “Calibrated on”, “Due on”.',
    );
    const fields = [
      [toolBoard.name, 'K'],
      [toolBoard.description, 'Click wrench 1–6 N·m'],
      [toolBoard.lowest, '1'],
      [toolBoard.highest, '6'],
      [toolBoard.increment, '0,1'],
    ] as const;
    for (const [label, text] of fields) await user.type(form.getByLabelText(label), text);
    await user.type(form.getByLabelText(toolBoard.calibrated), '2026-03-02');
    await user.click(form.getByRole('button', { name: toolBoard.save }));
    expect(form.getAllByRole('alert').map((alert) => alert.textContent)).toEqual([
      'Look again at “Due on”.',
      toolBoard.faults.dueOn,
    ]);
    await user.type(form.getByLabelText(toolBoard.due), '2027-03-02');
    await user.click(form.getByRole('button', { name: toolBoard.save }));
    expect(await screen.findByRole('link', { name: /Click wrench 1–6 N·m/ })).toBeVisible();
    const [tool] = app.tools.getState().rows;
    expect(tool).toMatchObject({ id: 'K', wrench: { increment: 0.1, calibratedOn: '2026-03-02' } });
  });

  test('that is a wrench has no day of calibration until somebody has read it', async () => {
    await showBoard(<ToolBoard />, [fit]);
    await userEvent.click(screen.getByRole('button', { name: toolBoard.add }));
    const day = within(screen.getByRole('dialog')).getByLabelText(toolBoard.calibrated);
    expect(day).toHaveValue('');
    expect(day).toBeRequired();
  });

  test('never takes a name that stands on the board', async () => {
    const user = userEvent.setup();
    await showBoard(<ToolBoard />, [fit]);
    await user.click(screen.getByRole('button', { name: toolBoard.add }));
    const form = within(screen.getByRole('dialog', { name: toolBoard.add }));
    const fields = [
      [toolBoard.name, 'B'],
      [toolBoard.description, 'Another'],
      [toolBoard.lowest, '1'],
      [toolBoard.highest, '6'],
      [toolBoard.increment, '0.1'],
    ] as const;
    for (const [label, text] of fields) await user.type(form.getByLabelText(label), text);
    await user.type(form.getByLabelText(toolBoard.calibrated), '2026-11-25');
    await user.type(form.getByLabelText(toolBoard.due), '2027-11-25');
    await user.click(form.getByRole('button', { name: toolBoard.save }));
    expect(await form.findByRole('alert')).toHaveTextContent(
      words.refusal({ code: 'tool-name-taken', name: 'B' }),
    );
  });

  test('that is an adapter is added, changed and retired', async () => {
    const user = userEvent.setup();
    const { app } = await showBoard(<ToolBoard />, [fit]);
    await user.click(screen.getByRole('button', { name: toolBoard.addAdapter }));
    const form = within(screen.getByRole('dialog', { name: toolBoard.addAdapter }));
    await user.type(form.getByLabelText(toolBoard.adapterName), 'Crowfoot 10 mm');
    await user.type(form.getByLabelText(toolBoard.grip), '165');
    await user.click(form.getByRole('button', { name: toolBoard.saveAdapter }));
    expect(form.getByRole('alert')).toHaveTextContent(toolBoard.adapterWrong);
    await user.type(form.getByLabelText(toolBoard.offset), '24');
    await user.selectOptions(form.getByLabelText(toolBoard.onWrench), 'B');
    await user.click(form.getByRole('button', { name: toolBoard.saveAdapter }));
    expect(
      await screen.findByText('24 mm from the drive, 0°, grip 165 mm, on wrench B'),
    ).toBeVisible();

    await user.click(screen.getByRole('button', { name: 'Change Crowfoot 10 mm' }));
    await user.click(screen.getByRole('button', { name: toolBoard.retire }));
    expect(await screen.findByText(toolBoard.retired)).toBeVisible();
    const adapter = app.tools.getState().rows.find(({ kind }) => kind === 'adapter');
    expect(adapter).toMatchObject({ retired: true, adapter: { grip: 165, offset: 24, angle: 0 } });
  });
});

function missing(): never {
  throw new Error('no such button');
}
