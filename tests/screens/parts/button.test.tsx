/** A button records once, says what it is, and cannot be pressed while its tap is on the way to the disk. */

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { Button } from '../../../src/screens/parts';

describe('a button', () => {
  test('records one tap once', async () => {
    const onPress = vi.fn();
    render(<Button onPress={onPress}>All four clicked</Button>);
    await userEvent.click(screen.getByRole('button', { name: 'All four clicked' }));
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  test('that is busy swallows a second tap, and says that it is busy', async () => {
    const onPress = vi.fn();
    render(<Saving onPress={onPress} />);
    const button = screen.getByRole('button');
    expect(button).not.toHaveAttribute('aria-busy');
    await userEvent.dblClick(button);
    await userEvent.keyboard('{Enter}');
    expect(onPress).toHaveBeenCalledTimes(1);
    expect(button).toHaveAttribute('aria-busy', 'true');
  });

  test('that is busy keeps the focus, so that a keyboard does not lose its place', async () => {
    render(<Saving onPress={() => undefined} />);
    await userEvent.click(screen.getByRole('button'));
    expect(screen.getByRole('button')).toHaveFocus();
  });

  test('that is disabled does nothing', async () => {
    const onPress = vi.fn();
    render(
      <Button disabled onPress={onPress}>
        Done
      </Button>,
    );
    await userEvent.click(screen.getByRole('button'));
    expect(onPress).not.toHaveBeenCalled();
  });

  test('says what comes next behind its label, and whether it is held down', () => {
    render(
      <Button detail="next: fit the bell" pressed>
        Done
      </Button>,
    );
    expect(
      screen.getByRole('button', { name: /^Done ?next: fit the bell$/, pressed: true }),
    ).toBeVisible();
  });

  test('sends no form unless it is asked to', async () => {
    const onSubmit = vi.fn((event: Event) => event.preventDefault());
    const { container } = render(
      <form>
        <Button>Close</Button>
        <Button type="submit">Take in</Button>
      </form>,
    );
    container.querySelector('form')?.addEventListener('submit', onSubmit);
    await userEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(onSubmit).not.toHaveBeenCalled();
    await userEvent.click(screen.getByRole('button', { name: 'Take in' }));
    expect(onSubmit).toHaveBeenCalledTimes(1);
  });
});

/** A tap that never comes back from the disk. */
function Saving({ onPress }: { readonly onPress: () => void }) {
  const [isBusy, setBusy] = useState(false);
  return (
    <Button
      busy={isBusy}
      onPress={() => {
        setBusy(true);
        onPress();
      }}
    >
      Done
    </Button>
  );
}
