/** Every figure known for a joint, side by side: in order of trust, with where it comes from, contradictions in words. */

import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { emptyJob, type JobPlan, type JobState } from '../../../src/engine/job';
import type { Figure } from '../../../src/engine/torque';
import { AppContext } from '../../../src/screens/app-context';
import { FigureSources } from '../../../src/screens/stand/figure-sources';
import type { ShownJob } from '../../../src/screens/use-job';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { figureFrom, jointStep, plainStep } from '../../support/joint-steps';
import { createTestApp, must, settled } from '../../support/test-app';

const bike = bikeFrom(mountainBike);
const step = jointStep();
const booklet = figureFrom({ min: 5, max: 6 }, { kind: 'document', reference: 'Booklet, page 8' });
const marked = figureFrom({ max: 5 }, { kind: 'part', printed: 'max 5 N·m' });

interface Known {
  readonly entered?: readonly Figure[];
  readonly planned?: Figure;
  readonly shelf?: Figure;
  readonly isDone?: boolean;
}

const onUse = vi.fn();
beforeEach(() => onUse.mockClear());

/** One job as far as its figures go. */
function jobWith({ entered = [], planned, isDone = false }: Known): ShownJob {
  const figure = entered.at(-1);
  const state = {
    ...emptyJob(),
    bike,
    plan: {
      steps: [step],
      points: [],
      contents: [],
      figures: planned ? { 'stem-bolts': planned } : {},
    } as unknown as JobPlan, // as much of a plan as is looked at
    joints: figure ? { 'stem-bolts': { figure, passes: [], stale: false } } : {},
    steps: isDone ? { stem: { standing: 'done', done: [] } } : {},
  } as JobState;
  const entries = entered.map((one, index) => ({
    by: people.mechanic,
    at: { claimed: `2026-11-25T1${index}:00:00+00:00`, zone: 'Europe/London' },
    event: { kind: 'figure-entered', v: 1, joint: 'stem-bolts', figure: one },
  }));
  return { open: { job: 'job-1', state, entries } } as unknown as ShownJob;
}

const people = { mechanic: '', supervisor: '' };

async function show(known: (own: typeof people) => Known, { comes = true } = {}) {
  const { app } = createTestApp();
  const own = await app.startOwnShop({ shop: 'Test', market: 'gb', name: 'Petra', pin: '508236' });
  const noor = await app.addPerson(
    { name: 'Noor', roles: ['mechanic'], pin: '274913' },
    { supervisor: must(own).id, supervisorPin: '508236' },
  );
  Object.assign(people, { supervisor: must(own).id, mechanic: must(noor).id });
  if (comes) app.session.getState().come(people.mechanic);
  else app.session.getState().leave();
  const given = known(people);
  const { make, model } = bike;
  if (given.shelf !== undefined)
    must(await app.saveFigure({ make, model, joint: 'stem-bolts', figure: given.shelf }));
  await settled();
  render(
    <AppContext value={app}>
      <FigureSources shown={jobWith(given)} step={step} onUse={onUse} />
    </AppContext>,
  );
  await userEvent.click(screen.getByText(/figures? known/));
  return people;
}

const rows = () => screen.getAllByRole('listitem').map((row) => row.textContent ?? '');
const row = (index: number) => {
  const found = screen.getAllByRole('listitem')[index];
  if (found === undefined) throw new Error(`there is no row ${index}`);
  return within(found);
};

describe('figures side by side', () => {
  test('stand in order of trust, each with where it comes from', async () => {
    await show(({ supervisor }) => ({
      entered: [marked],
      planned: booklet,
      shelf: figureFrom({ min: 4, max: 5 }, { kind: 'approved', by: supervisor, on: '2026-03-02' }),
    }));
    expect(rows()).toEqual([
      expect.stringMatching(/^max 5 N·mmarked on the part; entered on this bike by Noor on 25 Nov/),
      expect.stringMatching(/^5–6 N·mBooklet, page 8, for this model/),
      expect.stringMatching(/^4–5 N·mapproved by Petra on 2 March 2026, for this model/),
      expect.stringMatching(/^4–6 N·musual range, no specification \(made up for a test\)/),
    ]);
    expect(row(0).getByText(/^in use; the most trusted$/)).toBeVisible();
  });

  test('a contradiction is said in words, in the row and before it is opened', async () => {
    await show(() => ({
      entered: [figureFrom({ max: 4 }, { kind: 'part', printed: 'max 4 N·m' })],
      planned: booklet,
    }));
    expect(screen.getByText('The figures known contradict each other')).toBeVisible();
    expect(row(1).getByText(/contradicts the most trusted: no torque keeps both/)).toBeVisible();
    expect(row(2).queryByText(/contradicts/)).toBeNull();
  });

  test('figures that can be kept together are not called a contradiction', async () => {
    await show(() => ({ entered: [marked], planned: booklet }));
    expect(screen.getByText('All three figures known, side by side')).toBeVisible();
    expect(row(1).getByText('can be kept together with the most trusted')).toBeVisible();
  });

  test('each that may be used is one tap, the one in use none', async () => {
    await show(() => ({ entered: [marked], planned: booklet }));
    expect(row(0).queryByRole('button')).toBeNull();
    await userEvent.click(row(1).getByRole('button', { name: 'Use 5–6 N·m' }));
    expect(onUse).toHaveBeenCalledExactlyOnceWith(booklet);
  });

  test('what another bike’s part said is used only as what this part says', async () => {
    await show(() => ({ shelf: marked }));
    expect(row(0).getByText('read on the part of another bike of this model')).toBeVisible();
    await userEvent.click(row(0).getByRole('button', { name: 'This part says max 5 N·m' }));
    expect(onUse).toHaveBeenCalledExactlyOnceWith(marked);
  });

  test('a usual range is taken in one’s own name, by somebody who is there', async () => {
    const { mechanic } = await show(() => ({}));
    expect(rows()).toHaveLength(1);
    await userEvent.click(row(0).getByRole('button', { name: 'Use 4–6 N·m in my name' }));
    expect(onUse).toHaveBeenCalledExactlyOnceWith({
      min: 4,
      max: 6,
      source: { kind: 'usual', acceptedBy: mechanic },
    });
  });

  test('a usual range is nobody’s while nobody is at the stand', async () => {
    await show(() => ({}), { comes: false });
    expect(row(0).getByRole('button')).toBeDisabled();
  });

  test('the same figure known twice stands once', async () => {
    await show(() => ({ planned: booklet, shelf: booklet }));
    expect(rows()).toHaveLength(2);
  });

  test('what was entered first on this bike and changed since is still shown', async () => {
    await show(() => ({ entered: [figureFrom({ max: 8 }, marked.source), marked] }));
    expect(rows().slice(0, 2)).toEqual([
      expect.stringMatching(/^max 5 N·m/),
      expect.stringMatching(/^max 8 N·m/),
    ]);
    expect(row(1).getByRole('button', { name: 'This part says max 8 N·m' })).toBeVisible();
  });
});

describe('where there is nothing to choose', () => {
  test.each([
    ['a step without a joint', plainStep, {}],
    ['a joint that is done', step, { isDone: true }],
  ])('%s shows nothing', (_, of, known) => {
    const { app } = createTestApp();
    const { container } = render(
      <AppContext value={app}>
        <FigureSources shown={jobWith(known)} step={of} onUse={onUse} />
      </AppContext>,
    );
    expect(container).toBeEmptyDOMElement();
  });
});
