/** The bar: one action that records, others that step aside, and a reason where there is no action. */

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { ActionBar } from '../../../src/screens/parts';

describe('the bar', () => {
  test('swallows a tap on its action while the one before is being kept', async () => {
    const onPress = vi.fn();
    const { rerender } = render(<ActionBar action={{ label: 'Done', onPress }} />);
    await userEvent.click(screen.getByRole('button', { name: 'Done' }));
    rerender(<ActionBar action={{ label: 'Done', onPress, busy: true }} />);
    await userEvent.click(screen.getByRole('button', { name: 'Done' }));
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  test('says why in place of an action that may not be', () => {
    render(<ActionBar>First: fit the bar.</ActionBar>);
    expect(screen.queryByRole('button')).toBeNull();
    expect(screen.getByText('First: fit the bar.')).toBeVisible();
  });

  test('leaves what steps aside within reach, each on its own', async () => {
    const [back, hold] = [vi.fn(), vi.fn()];
    render(
      <ActionBar
        aside={[
          { label: 'Back', onPress: back, disabled: true },
          { label: 'Hold job', onPress: hold },
        ]}
      />,
    );
    await userEvent.click(screen.getByRole('button', { name: 'Back' }));
    await userEvent.click(screen.getByRole('button', { name: 'Hold job' }));
    expect(back).not.toHaveBeenCalled();
    expect(hold).toHaveBeenCalledTimes(1);
  });
});
