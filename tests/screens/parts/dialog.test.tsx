/** A dialog asks on top of the screen, has a name, and can always be left. */

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { Button, Dialog } from '../../../src/screens/parts';

/** jsdom has the element without its two methods: they do what the HTML standard says, as far as it shows. */
const methods = {
  showModal: HTMLDialogElement.prototype.showModal,
  close: HTMLDialogElement.prototype.close,
};
const showModal = vi.fn(function (this: HTMLDialogElement) {
  if (this.open) throw new DOMException('already open', 'InvalidStateError');
  this.open = true;
});

beforeAll(() => {
  Object.assign(HTMLDialogElement.prototype, {
    showModal,
    close(this: HTMLDialogElement) {
      this.open = false;
    },
  });
});
afterAll(() => void Object.assign(HTMLDialogElement.prototype, methods));

describe('a dialog', () => {
  test('opens over everything else, under the name of what it asks', () => {
    show();
    expect(showModal).toHaveBeenCalled();
    expect(screen.getByRole('dialog', { name: 'What was disturbed?' })).toBeVisible();
    expect(screen.getByRole('dialog')).toHaveTextContent('These go stale');
  });

  test('is left with the button that says so', async () => {
    const onClose = show();
    await userEvent.click(screen.getByRole('button', { name: 'Cancel' }));
    expect(onClose).toHaveBeenCalledTimes(1);
  });

  test('is left with Escape, and it is the screen that takes it away', () => {
    const onClose = show();
    // the browser turns Escape into this event (HTML standard, close requests)
    const cancel = new Event('cancel', { cancelable: true });
    screen.getByRole('dialog').dispatchEvent(cancel);
    expect(onClose).toHaveBeenCalledTimes(1);
    expect(cancel.defaultPrevented).toBe(true);
    expect(screen.getByRole('dialog')).toBeVisible();
  });

  test('has its answers beside the way out', async () => {
    const onReopen = vi.fn();
    show(<Button onPress={onReopen}>Reopen it</Button>);
    await userEvent.click(screen.getByRole('button', { name: 'Reopen it' }));
    expect(onReopen).toHaveBeenCalledTimes(1);
  });

  test('is not opened twice when the screen is drawn again', () => {
    showModal.mockClear();
    const dialog = (text: string) => (
      <Dialog title="Which wrench?" closeLabel="Close" onClose={() => undefined}>
        {text}
      </Dialog>
    );
    const { rerender } = render(dialog('W2'));
    rerender(dialog('W3'));
    expect(showModal).toHaveBeenCalledTimes(1);
    expect(screen.getByRole('dialog')).toHaveTextContent('W3');
  });
});

function show(actions?: React.ReactNode) {
  const onClose = vi.fn();
  render(
    <Dialog title="What was disturbed?" closeLabel="Cancel" onClose={onClose} actions={actions}>
      <p>These go stale</p>
    </Dialog>,
  );
  return onClose;
}
