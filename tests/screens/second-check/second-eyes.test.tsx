/** The second pair of eyes: each joint is ticked, and whoever looked confirms with a tap and their PIN. */

import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test } from 'vitest';
import { unconfirmedJoints } from '../../../src/engine/job';
import { AppContext } from '../../../src/screens/app-context';
import { SecondEyes } from '../../../src/screens/second-check/second-eyes';
import { loadJob, workThrough } from '../../../src/state';
import { peopleLabels, words } from '../../../src/words';
import { checkersPin, openShopWithAJob } from '../../support/shop-with-a-job';
import { openDialogsAsBrowsersDo } from '../../support/shown-board';
import { must, settled } from '../../support/test-app';

beforeEach(openDialogsAsBrowsersDo);

test('an apprentice’s joints are confirmed by somebody who may, and by nobody else', async () => {
  const { app, bench, job, checker, storage } = await openShopWithAJob();
  const pin = '639471';
  const byChecker = { supervisor: checker.id, supervisorPin: checkersPin };
  const learner = must(
    await app.addPerson({ name: 'Ines', roles: ['apprentice'], pin }, byChecker),
  );
  await settled();
  app.session.getState().come(learner.id);
  const state = await workThrough({ ...bench, person: learner }, job);
  const joints = unconfirmedJoints(state);
  render(
    <AppContext value={app}>
      <SecondEyes job={job} state={state} />
    </AppContext>,
  );
  const boxes = screen.getAllByRole('checkbox');
  expect(boxes).toHaveLength(joints.length);
  const confirm = screen.getByRole('button', { name: peopleLabels.eyesBy(checker.name) });
  expect(confirm).toBeDisabled();
  expect(screen.queryByRole('button', { name: peopleLabels.eyesBy('Ines') })).toBeNull();

  const [box] = boxes;
  if (box === undefined) throw new Error('there is a joint to tick');
  await userEvent.click(box);
  await userEvent.click(confirm);
  const dialog = screen.getByRole('dialog', { name: words.sign.pinOf(checker.name) });
  expect(within(dialog).getByText(peopleLabels.eyesMeans(1))).toBeVisible();
  for (const digit of checkersPin)
    await userEvent.click(within(dialog).getByRole('button', { name: digit }));
  await waitFor(
    async () => {
      const now = (await loadJob(storage, job))?.state;
      expect(now && unconfirmedJoints(now)).toEqual(joints.slice(1));
    },
    { timeout: 30_000 },
  );
  expect(app.session.getState().person).toBe(learner.id);
}, 90_000);
