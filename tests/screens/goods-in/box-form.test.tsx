/** A box typed by hand: what is not right stands beside its field, and nothing goes on the rack before it is. */

import { screen } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, test } from 'vitest';
import { BoxForm } from '../../../src/screens/goods-in/box-form';
import { words } from '../../../src/words';
import { type ShownBoard, showBoard } from '../../support/shown-board';

const text = words.goodsIn;
const front = `${text.wheel.front}: ${text.tyre}`;

let user: UserEvent;
let shown: ShownBoard;

beforeEach(async () => {
  user = userEvent.setup();
  shown = await showBoard(<BoxForm />, []);
  const typed = [
    [text.make, 'Larkfell'],
    [text.model, 'Hardtail 29'],
    [text.frameNumber, 'LF29-1'],
    [front, '57-622'],
  ] as const;
  for (const [label, value] of typed) await user.type(screen.getByLabelText(label), value);
});

const take = () => user.click(screen.getByRole('button', { name: new RegExp(`^${text.take}`) }));
/** Planning code is fetched and a log sealed; a busy machine takes its time. */
const patient = { timeout: 4000 };
const rack = () => shown.app.rack.getState().rows;
const write = async (label: string, value: string) => {
  const field = screen.getByLabelText(label);
  await user.clear(field);
  await user.type(field, value);
};

describe('the door', () => {
  test.each([
    [text.pressure, '65-40 psi', /the lower figure first, for example 40–65 psi/],
    [text.pressure, '5-2.5 bar', /the lower figure first/],
    [text.post, '309', 'Write a number from 22 to 36 mm, for example 27.2.'],
    [text.post, '272', 'Write a number from 22 to 36 mm, for example 27.2.'],
    [text.speeds, '99', 'Write a whole number from 1 to 14, for example 7.'],
    [text.loadLimit, '9999', 'Write a number from 20 to 500 kg, for example 120.'],
    [front, 'big', /“big” cannot be read. Write it as two numbers/],
    // GS1 General Specifications: 629104150021 has the check digit 3.
    [text.scan, '6291041500214', text.gtinShape],
  ])('refuses under %s: %s', async (label, value, sentence) => {
    await write(label, value);
    expect(screen.queryByRole('alert')).toBeNull(); // nobody is complained at while typing
    await take();
    const field = screen.getByLabelText(label);
    expect(field).toBeInvalid();
    expect(field).toHaveAccessibleDescription(
      typeof sentence === 'string' ? expect.stringContaining(sentence) : sentence,
    );
    expect(field).toHaveFocus();
    expect(screen.getByText(text.correctFirst)).toBeVisible();
    expect(rack()).toEqual([]);
  });

  test('names both fields that no bike has together', async () => {
    await user.selectOptions(screen.getByLabelText(text.gears), 'single-speed');
    await take();
    expect(screen.getByLabelText(text.gears)).toHaveAccessibleDescription(
      text.atOdds('gears.speeds', 12),
    );
    await write(text.speeds, '1');
    expect(screen.getByLabelText(text.gears)).toBeValid();
    await take();
    expect(await screen.findByText(text.taken('LF29-1'), {}, patient)).toBeVisible();
  });

  test('lets a box through that makes sense, with materials that nobody knows yet', async () => {
    for (const label of [text.frameMaterial, text.barMaterial, text.postMaterial])
      expect(screen.getByLabelText(label)).toHaveDisplayValue('not known');
    expect(screen.getByText(text.materialsHint)).toBeVisible();
    await take();
    expect(await screen.findByText(text.taken('LF29-1'), {}, patient)).toBeVisible();
    await expect.poll(() => rack().map(({ frameNumber }) => frameNumber)).toEqual(['LF29-1']);
  });
});

test('no two fields have the same name', () => {
  const labels = [...document.querySelectorAll('label[for]')].map((label) => label.textContent);
  expect(labels.length).toBeGreaterThan(20);
  expect(labels.filter((label, index) => labels.indexOf(label) !== index)).toEqual([]);
});
