/** Fields are named by their labels, and what is wrong with one is announced and belongs to it. */

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test } from 'vitest';
import { Checks, Choice, Pick, TextField } from '../../../src/screens/parts';

const wrong = 'Write a number, for example 27.2.';
const answers = [
  { value: 'kept', label: 'Keep it', detail: 'in the box' },
  { value: 'left', label: 'Leave it' },
] as const;

type Answer = (typeof answers)[number]['value'];

describe('what is wrong', () => {
  test.each([
    [
      'a text field',
      () => <TextField label="Post" value="x" onChange={ignore} error={wrong} />,
      'textbox',
    ],
    [
      'a text field of many lines',
      () => <TextField label="Post" lines={3} value="x" onChange={ignore} error={wrong} />,
      'textbox',
    ],
    [
      'a picker',
      () => <Pick label="Post" value="kept" options={answers} onChange={ignore} error={wrong} />,
      'combobox',
    ],
    [
      'a choice',
      () => (
        <Choice label="Post" value={undefined} options={answers} onChange={ignore} error={wrong} />
      ),
      'group',
    ],
    [
      'checks',
      () => <Checks label="Post" values={[]} options={answers} onChange={ignore} error={wrong} />,
      'group',
    ],
  ] as const)('with %s is announced, and described by the field itself', (_, Field, role) => {
    render(<Field />);
    expect(screen.getByRole('alert')).toHaveTextContent(wrong);
    expect(screen.getByRole(role, { name: 'Post' })).toHaveAccessibleDescription(wrong);
  });

  test('marks the field as invalid, until it is put right', () => {
    const { rerender } = render(
      <TextField label="Post" value="x" onChange={ignore} error={wrong} />,
    );
    expect(screen.getByRole('textbox')).toBeInvalid();
    rerender(<TextField label="Post" value="27.2" onChange={ignore} />);
    expect(screen.getByRole('textbox')).toBeValid();
    expect(screen.queryByRole('alert')).toBeNull();
  });

  test('stands beside the hint, never in its place', () => {
    render(
      <TextField label="Post" hint="In millimetres." value="x" onChange={ignore} error={wrong} />,
    );
    expect(screen.getByRole('textbox')).toHaveAccessibleDescription(`In millimetres. ${wrong}`);
  });
});

describe('what is answered', () => {
  test('text is typed as it is', async () => {
    render(<Typed />);
    const field = screen.getByRole('textbox', { name: 'Frame number' });
    await userEvent.type(field, 'LF29-204118');
    expect(field).toHaveValue('LF29-204118');
  });

  test('of a choice one answer holds at a time', async () => {
    render(<Chosen />);
    const [kept, left] = screen.getAllByRole('radio');
    await userEvent.click(screen.getByText('Keep it'));
    expect(kept).toBeChecked();
    await userEvent.click(screen.getByText('Leave it'));
    expect(kept).not.toBeChecked();
    expect(left).toBeChecked();
  });

  test('of checks several hold, and each can be taken back', async () => {
    render(<Checked />);
    const [kept, left] = screen.getAllByRole('checkbox');
    await userEvent.click(screen.getByText('Keep it'));
    await userEvent.click(screen.getByText('Leave it'));
    expect(kept).toBeChecked();
    expect(left).toBeChecked();
    await userEvent.click(screen.getByText('Keep it'));
    expect(kept).not.toBeChecked();
    expect(left).toBeChecked();
  });

  test('nothing is picked until somebody picks', async () => {
    render(<Picked />);
    const picker = screen.getByRole('combobox', { name: 'Spacer' });
    expect(picker).toHaveDisplayValue('Choose one');
    await userEvent.selectOptions(picker, 'Leave it');
    expect(picker).toHaveValue('left');
  });
});

function ignore() {}

function Typed() {
  const [value, onChange] = useState('');
  return <TextField label="Frame number" value={value} onChange={onChange} />;
}

function Chosen() {
  const [value, onChange] = useState<Answer>();
  return <Choice label="Spacer" options={answers} value={value} onChange={onChange} />;
}

function Checked() {
  const [values, onChange] = useState<readonly Answer[]>([]);
  return <Checks label="Spacer" options={answers} values={values} onChange={onChange} />;
}

function Picked() {
  const [value, onChange] = useState<Answer | ''>('');
  return (
    <Pick label="Spacer" prompt="Choose one" options={answers} value={value} onChange={onChange} />
  );
}
