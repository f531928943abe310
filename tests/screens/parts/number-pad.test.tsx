/** The pad types what its keys say, and nothing that does not fit. */

import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test } from 'vitest';
import { NumberPad, type NumberPadProps } from '../../../src/screens/parts';

describe('the number pad', () => {
  test.each([
    ['a whole number', ['1', '2', '0'], '120'],
    ['a decimal', ['5', '.', '5'], '5.5'],
    ['a marking, as printed', ['4', '–', '6', 'N·m'], '4–6 N·m'],
    ['a marking that starts with a word', ['max', '5', 'N·m'], 'max 5 N·m'],
    ['a correction', ['4', '7', 'Erase last', '6'], '46'],
    ['erasing what is not there', ['Erase last', '3'], '3'],
    ['more than there is room for', ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'], '12345678'],
    ['a key that would only half fit', ['1', '2', '3', '4', '5', '6', '7', 'N·m', '8'], '12345678'],
  ])('%s', async (_, keys, expected) => {
    const maxLength = /room|fit/.test(_) ? 8 : 24;
    render(<Pad point="." extraKeys={['–', 'max ', ' N·m']} maxLength={maxLength} />);
    for (const key of keys) await userEvent.click(screen.getByRole('button', { name: key }));
    expect(screen.getByRole('status')).toHaveTextContent(expected);
    expect(screen.getByRole('status').textContent).toBe(expected);
  });

  test('has no point where only whole numbers are', () => {
    render(<Pad />);
    expect(screen.queryByRole('button', { name: '.' })).toBeNull();
    expect(screen.getAllByRole('button')).toHaveLength(11);
  });

  test('is a named group whose keys a keyboard reaches too', async () => {
    render(<Pad />);
    const pad = screen.getByRole('group', { name: 'Figure' });
    const one = within(pad).getByRole('button', { name: '1' });
    await userEvent.tab();
    expect(one).toHaveFocus();
    await userEvent.keyboard('{Enter} ');
    expect(screen.getByRole('status').textContent).toBe('11');
  });
});

function Pad(changes: Partial<NumberPadProps>) {
  const [value, onChange] = useState('');
  return (
    <>
      <output>{value}</output>
      <NumberPad
        label="Figure"
        value={value}
        onChange={onChange}
        eraseLabel="Erase last"
        {...changes}
      />
    </>
  );
}
