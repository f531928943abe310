/** The frame round every place: an offer to install that was put off does not come back by itself. */

import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { Shell } from '../../src/screens/shell';
import { words } from '../../src/words';
import { showBoard } from '../support/shown-board';

test('an offer to install that was put off stays put off when the app is opened again', async () => {
  const offer = createStore(() => ({ offered: true, installed: false }));
  const shell = <Shell>{null}</Shell>;
  const { app, leave, show } = await showBoard(shell, [], () => ({ install: offer }));
  expect(screen.getByText(words.app.installOffered)).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: words.app.close }));
  expect(screen.queryByText(words.app.installOffered)).toBeNull();
  leave();
  show(shell);
  expect(screen.queryByText(words.app.installOffered)).toBeNull();
  expect(app.session.getState().preferences.installPutOff).toBe(true);
});
