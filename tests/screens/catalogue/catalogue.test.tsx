/** The catalogue as a supervisor and a mechanic see it: found, read, changed with a reason, taught, and brought in from a file. */

import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { Router } from 'wouter';
import { memoryLocation } from 'wouter/memory-location';
import { writeCatalogueFile } from '../../../src/exchange/catalogue-file';
import { loadBikesToTry } from '../../../src/exchange/seeds';
import { AppContext } from '../../../src/screens/app-context';
import { Catalogue } from '../../../src/screens/catalogue/catalogue';
import { routes } from '../../../src/screens/routes';
import { words } from '../../../src/words';
import { catalogueWords } from '../../../src/words/catalogue';
import { versionOf } from '../../support/shop-versions';
import { createTestApp, must, settled, type TestApp } from '../../support/test-app';
import { unusedKeys as keys } from '../../support/unused-keys';

// jsdom takes its time over three hundred rows, beside other tests all the more.
vi.setConfig({ testTimeout: 30_000 });

const { form, change, history, apprentice, step: stepText } = catalogueWords;
const user = userEvent.setup();
let shop: TestApp;
let where: ReturnType<typeof memoryLocation>;

/** jsdom has the element without its two methods. */
Object.assign(HTMLDialogElement.prototype, {
  showModal: vi.fn(function (this: HTMLDialogElement) {
    this.open = true;
  }),
  close(this: HTMLDialogElement) {
    this.open = false;
  },
});

beforeEach(async () => {
  shop = createTestApp({ keys, loadBikesToTry: async () => (await loadBikesToTry()).slice(0, 14) });
  must(await shop.app.startOwnShop({ shop: 'Test', market: 'gb', name: 'Petra', pin: '508236' }));
  await settled();
});

async function show(path: string): Promise<void> {
  where = memoryLocation({ path, record: true });
  render(
    <AppContext value={shop.app}>
      <Router hook={where.hook}>
        <Catalogue />
      </Router>
    </AppContext>,
  );
  await waitFor(() => expect(screen.queryByText(words.app.opening)).toBeNull(), { timeout: 4000 });
}

const press = (name: string | RegExp) => user.click(screen.getByRole('button', { name }));
const dialog = () => within(screen.getByRole('dialog', { hidden: true }));

async function keepBecause(reason: string): Promise<void> {
  await user.type(dialog().getByLabelText(form.reason), reason);
  await user.click(dialog().getByRole('button', { name: new RegExp(form.save), hidden: true }));
}

describe('reading', () => {
  test('finds a step by words of its text, its joint and its tools, in any order', async () => {
    await show(routes.catalogue);
    await user.click(screen.getByRole('searchbox'));
    await user.paste('hex FACEPLATE gap');
    const found = screen.getAllByRole('listitem').map((row) => row.textContent);
    expect(found.some((text) => text?.includes('Bring the faceplate bolts up together'))).toBe(
      true,
    );
    expect(found.length).toBeLessThan(10);
    await user.paste(' moon');
    expect(screen.getByText(catalogueWords.none)).toBeVisible();
    await user.clear(screen.getByRole('searchbox'));
    await user.selectOptions(screen.getByLabelText(catalogueWords.zone), 'seat');
    expect(screen.getAllByRole('heading', { level: 2 }).map((one) => one.textContent)).toEqual([
      words.terms.zoneNames.seat,
    ]);
    await user.selectOptions(screen.getByLabelText(catalogueWords.zone), 'all');
  });

  test('shows one step whole: words, joint, usual range with its source, and whom it is for', async () => {
    await show(routes.catalogueStep('faceplate'));
    for (const text of [
      /Opposite bolts in turn/,
      'stem is threadless',
      /4 bolts M5, right-hand thread/,
      /4–6 N·m \(common practice, no source\)\. A usual range is no specification\./,
      stepText.risks.A,
      'Never grease where the bar is clamped.',
    ])
      expect(screen.getByText(text)).toBeVisible();
  });

  test('is for everybody, changing for supervisors', async () => {
    const noor = must(
      await shop.app.addPerson(
        { name: 'Noor', roles: ['mechanic'], pin: '274913' },
        { supervisor: shop.app.session.getState().person ?? '', supervisorPin: '508236' },
      ),
    );
    await settled();
    shop.app.session.getState().come(noor.id);
    await show(routes.catalogueStep('faceplate'));
    expect(screen.getByRole('button', { name: apprentice.open })).toBeVisible();
    expect(screen.queryByRole('button', { name: change.words })).toBeNull();
  });
});

describe('changing', () => {
  test('other words are kept as a version with a reason, and stand in the list at once', async () => {
    await show(routes.catalogueStep('faceplate'));
    await press(change.words);
    await user.clear(dialog().getByLabelText(stepText.how));
    await user.type(dialog().getByLabelText(stepText.how), 'A quarter turn each.');
    await user.type(dialog().getByLabelText(form.ownCautions), 'Mind the computer mount.');
    await keepBecause('Clearer so.');
    expect(await screen.findByText(form.kept(1))).toBeVisible();
    expect(screen.getByText('A quarter turn each.')).toBeVisible();
    expect(screen.getByText('Mind the computer mount.')).toBeVisible();
    expect(screen.getByText('Never grease where the bar is clamped.')).toBeVisible();
    expect(await shop.storage.catalogueVersions.all()).toMatchObject([
      { version: 1, by: 'Petra', reason: 'Clearer so.' },
    ]);
  });

  test('without a reason, or without a change, is refused in words', async () => {
    await show(routes.catalogueStep('faceplate'));
    await press(change.words);
    await keepBecause('  ');
    expect(await screen.findByRole('alert', { hidden: true })).toHaveTextContent('Say why');
    await keepBecause('Because.');
    await waitFor(() =>
      expect(screen.getByRole('alert', { hidden: true })).toHaveTextContent('Nothing is different'),
    );
  });

  test('a class A joint’s step cannot be switched off', async () => {
    await show(routes.catalogueStep('faceplate'));
    await press(change.off);
    await keepBecause('No time.');
    expect(await screen.findByRole('alert', { hidden: true })).toHaveTextContent(
      /brings Faceplate to its figure; if that works loose, the rider falls/,
    );
  });

  test('a step that a bike needs cannot be switched off, and the bike is named', async () => {
    await show(routes.catalogueStep('bell'));
    await press(change.off);
    await keepBecause('We leave bells off.');
    expect(await screen.findByRole('alert', { hidden: true })).toHaveTextContent(
      /spoil the plan of a .+ bike \(.*bell.*\): Bell would stay in its box/,
    );
    expect(await shop.storage.catalogueVersions.all()).toEqual([]);
  });

  test('a step that no bike needs is switched off and on again', async () => {
    await show(routes.catalogueStep('wipe-down'));
    await press(change.off);
    await keepBecause('The valet does it.');
    expect(await screen.findByText(new RegExp(catalogueWords.off))).toBeVisible();
    await press(change.on);
    await keepBecause('The valet has left.');
    expect(await screen.findByText(form.kept(2))).toBeVisible();
  });

  test('times that are no numbers, or out of order, are not kept', async () => {
    await show(routes.catalogueStep('wipe-down'));
    await press(change.effort);
    const most = dialog().getByLabelText(form.most);
    await user.clear(most);
    await user.type(most, 'long');
    await keepBecause('It takes longer.');
    expect(dialog().getByText(form.number)).toBeVisible();
    await user.clear(most);
    await user.type(most, '0,1');
    await user.click(dialog().getByRole('button', { name: new RegExp(form.save), hidden: true }));
    expect(await dialog().findByText(/Put the three minutes in order/)).toBeVisible();
  });

  test('a figure for a make and model is approved in the supervisor’s name', async () => {
    await show(routes.catalogueStep('faceplate'));
    await press(change.figure);
    await user.type(dialog().getByLabelText(form.make), 'Larkfell');
    await user.type(dialog().getByLabelText(form.model), 'Hardtail 29');
    await user.type(dialog().getByLabelText(form.max), '53');
    await keepBecause('From the maker by telephone.');
    expect(await screen.findByRole('alert', { hidden: true })).toHaveTextContent('decimal point');
    await user.clear(dialog().getByLabelText(form.max));
    await user.type(dialog().getByLabelText(form.max), '5,3');
    await user.click(dialog().getByRole('button', { name: new RegExp(form.save), hidden: true }));
    expect(
      await screen.findByText(/Larkfell Hardtail 29: at most 5.3 N·m, approved by Petra/),
    ).toBeVisible();
  });

  test('a step of one’s own says what it needs, is tried, and is read at its own address', async () => {
    await show(routes.catalogueOwn(''));
    await press(new RegExp(form.addOwn));
    expect(screen.getAllByText(form.needed).length).toBe(4);
    await user.type(screen.getByLabelText(form.title), 'Hang the tag');
    for (const label of [stepText.how, stepText.why, stepText.right])
      await user.type(screen.getByLabelText(label), 'So it is.');
    await user.selectOptions(screen.getByLabelText(form.after), 'unpack');
    await user.selectOptions(screen.getByLabelText(form.question), 'kind');
    await user.click(screen.getByRole('checkbox', { name: 'town' }));
    await user.type(screen.getByLabelText(form.reason), 'Customers ask.');
    await press(new RegExp(form.addOwn));
    await waitFor(() =>
      expect(where.history.at(-1)).toBe(routes.catalogueStep('own-hang-the-tag')),
    );
    expect(screen.getByText('kind of bike is town')).toBeVisible();
    expect(screen.getByText(new RegExp(catalogueWords.own))).toBeVisible();
    await press(change.again);
    expect(screen.getByLabelText(form.title)).toHaveValue('Hang the tag');
    expect(screen.getByRole('checkbox', { name: 'town' })).toBeChecked();
  });
});

test('the apprentice sees the place, the reasons for the order, and where the number comes from', async () => {
  await show(routes.catalogueStep('steerer-clamp'));
  await press(apprentice.open);
  const lesson = dialog();
  expect(await lesson.findByRole('img', { name: /^Where it is: /, hidden: true })).toBeVisible();
  expect(lesson.getByText(apprentice.relies)).toBeVisible();
  const leaning = lesson.getByText(apprentice.heldUp).parentElement;
  expect(leaning).toHaveTextContent('Sight the bar against the front wheel again');
  expect(lesson.getByText(apprentice.onPart)).toBeVisible();
  expect(lesson.getByText(/That is to warn with, and no specification/)).toBeVisible();
});

describe('versions', () => {
  const words1 = { kind: 'change-words', step: 'unpack', words: { how: 'Lift it out.' } } as const;

  test('stand in the history with author, reason and content, and can be taken back', async () => {
    must(await shop.app.changeCatalogue({ reason: 'Backs hurt.', changes: [words1] }));
    await settled();
    await show(routes.catalogueChanges);
    expect(screen.getByText('Backs hurt.')).toBeVisible();
    expect(screen.getByText(/how now “Lift it out\.”/)).toBeVisible();
    await press(history.takeBack);
    await keepBecause('It was fine.');
    expect(await screen.findByText(history.takenBack)).toBeVisible();
  });

  test('of a file are shown, decided where both sides changed, and taken in', async () => {
    must(await shop.app.changeCatalogue({ reason: 'Backs hurt.', changes: [words1] }));
    await settled();
    const theirs = versionOf(
      1,
      [
        { ...words1, words: { how: 'Tip it out.' } },
        { kind: 'switch-off', step: 'wipe-down' },
      ],
      { id: 'elsewhere', by: 'Imre', reason: 'Quicker.' },
    );
    const text = writeCatalogueFile({
      ...{ versions: [theirs], catalogue: '1.0', shop: 'Elsewhere' },
      at: '2026-11-25T15:00:00+00:00',
    });
    await show(routes.catalogueChanges);
    const input = screen.getByLabelText(history.read, { selector: 'input' });
    await user.upload(input, new File(['{"no": 1}'], 'x.json', { type: 'application/json' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('Nothing was changed');
    await user.upload(input, new File([text], 'theirs.json', { type: 'application/json' }));
    expect(await screen.findByText(history.comes(1))).toBeVisible();
    await user.type(screen.getByLabelText(form.reason), 'We agreed.');
    await press(history.takeIn(1));
    expect(await screen.findByRole('alert')).toHaveTextContent('Decide first');
    await user.click(screen.getByRole('radio', { name: /^Theirs, by Imre/ }));
    await press(history.takeIn(1));
    expect(await screen.findByText(history.takenIn(1))).toBeVisible();
    expect(await shop.storage.catalogueVersions.all()).toHaveLength(3);
  });
});
