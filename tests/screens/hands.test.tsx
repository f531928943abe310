/** Changing hands: one tap, and a PIN where the shop asks for it; a stand left alone asks again and keeps its screen. */

import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { beforeEach, describe, expect, test } from 'vitest';
import { AppContext } from '../../src/screens/app-context';
import { HandsButton, SomebodyFirst } from '../../src/screens/hands';
import { IdleLock } from '../../src/screens/idle-lock';
import type { App } from '../../src/state';
import { words } from '../../src/words';
import { checkersPin, openShopWithAJob } from '../support/shop-with-a-job';
import { openDialogsAsBrowsersDo } from '../support/shown-board';
import { settled } from '../support/test-app';

const patience = 90_000;

function Typing() {
  const [text, setText] = useState('');
  return <input aria-label="note" value={text} onChange={(event) => setText(event.target.value)} />;
}

function show(app: App): void {
  render(
    <AppContext value={app}>
      <HandsButton />
      <SomebodyFirst />
      <IdleLock />
      <Typing />
    </AppContext>,
  );
}

beforeEach(openDialogsAsBrowsersDo);

describe('changing hands', () => {
  test(
    'takes one tap on a name',
    async () => {
      const { app, checker } = await openShopWithAJob();
      show(app);
      await userEvent.click(screen.getByRole('button', { name: /Noor/ }));
      await userEvent.click(screen.getByRole('button', { name: /Petra/ }));
      expect(app.session.getState().person).toBe(checker.id);
      expect(screen.queryByRole('dialog')).toBeNull();
    },
    patience,
  );

  test(
    'takes a PIN as well where the shop asks for it; a wrong one changes nothing',
    async () => {
      const { app, checker, mechanic } = await openShopWithAJob();
      app.session.getState().prefer({ askPin: true });
      show(app);
      await userEvent.click(screen.getByRole('button', { name: /Noor/ }));
      await userEvent.click(screen.getByRole('button', { name: /Petra/ }));
      const dialog = await screen.findByRole('dialog', { name: words.sign.pinOf(checker.name) });
      const type = async (pin: string) => {
        for (const digit of pin)
          await userEvent.click(within(dialog).getByRole('button', { name: digit }));
      };
      await type('000001');
      await within(dialog).findByText(
        words.refusal({ code: 'pin-wrong' }),
        {},
        { timeout: 30_000 },
      );
      expect(app.session.getState().person).toBe(mechanic.id);
      await type(checkersPin);
      await waitFor(() => expect(app.session.getState().person).toBe(checker.id), {
        timeout: 30_000,
      });
    },
    patience,
  );
});

test(
  'a stand left alone asks who is there at the next tap, and what was typed is still there',
  async () => {
    const { app, clock } = await openShopWithAJob();
    show(app);
    await settled();
    await userEvent.type(screen.getByLabelText('note'), 'a scr');
    clock.pass(11);
    await userEvent.click(document.body);
    expect(app.session.getState().person).toBeUndefined();
    const asked = await screen.findByRole('dialog', { name: words.hands.title });
    await userEvent.click(within(asked).getByRole('button', { name: /Noor/ }));
    expect(app.session.getState().person).toBeDefined();
    expect(screen.getByLabelText('note')).toHaveValue('a scr');
  },
  patience,
);
