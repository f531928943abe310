/** Why grease matters, as it is read at the stand: folded, two lines and a drawing, or one line that says why not. */

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { PlanJoint, PlanStep } from '../../../src/engine/plan';
import type { Figure } from '../../../src/engine/torque';
import { GreaseAdvice } from '../../../src/screens/stand/grease-advice';
import { figureFrom, jointStep, plainStep } from '../../support/joint-steps';

const printed = figureFrom({ min: 4, max: 6 });

async function unfold(step: PlanStep, figure: Figure | undefined = printed) {
  render(<GreaseAdvice step={step} figure={figure} />);
  await userEvent.click(screen.getByText('Why grease matters'));
}

describe('advice about grease', () => {
  test('is folded away until somebody asks', async () => {
    render(<GreaseAdvice step={jointStep()} figure={printed} />);
    expect(screen.getByText(/Nothing is computed until the stamp is picked/)).not.toBeVisible();
    await userEvent.click(screen.getByText('Why grease matters'));
    expect(screen.getByText(/Nothing is computed until the stamp is picked/)).toBeVisible();
  });

  test('computes nothing before the bolt’s own stamp is known, then says how much harder it clamps', async () => {
    await unfold(jointStep());
    expect(screen.queryByRole('img')).toBeNull();
    await userEvent.selectOptions(screen.getByLabelText('Stamp on the bolt’s head'), '8.8');
    // VDI 2230 long form, M5 × 0.8 under a socket head: 0.127 + 5.97·μ mm per N, μ 0.19 dry and 0.12 greased (middles of
    // its classes, from memory): 1.262 / 0.844 = 1.50.
    expect(
      screen.getByText('At the same 5 N·m, M5 clamps about 50 % harder greased than dry.'),
    ).toBeVisible();
    expect(
      screen.getByText(/of what a bolt stamped 8.8 bears without lasting stretch/),
    ).toBeVisible();
    expect(screen.getByRole('img', { name: /^Dry the bolt reaches/ })).toBeVisible();
    expect(screen.getByText(/never a specification/)).toBeVisible();
  });

  test('a bolt without a readable stamp stays uncomputed', async () => {
    await unfold(jointStep());
    const pick = screen.getByLabelText('Stamp on the bolt’s head');
    await userEvent.selectOptions(pick, '12.9');
    expect(screen.getByRole('img')).toBeVisible();
    await userEvent.selectOptions(pick, 'no stamp, or not readable');
    expect(screen.queryByRole('img')).toBeNull();
    expect(screen.getByText(/a bolt without one has no known strength/)).toBeVisible();
  });

  test.each<[situation: string, change: Partial<PlanJoint>, says: RegExp]>([
    ['carbon', { clamps: ['carbon'] }, /carbon is part of this joint/],
    ['an unknown material', { clamps: ['unknown'] }, /does not say what this bolt holds/],
    ['threadlocker', { preparation: 'threadlocker' }, /neither dry nor greased/],
    ['two threads', { thread: 'M5 or M6' }, /M5 or M6 is not one metric thread/],
  ])('%s gets one line that says why, and nothing to pick', async (_, change, says) => {
    await unfold(jointStep(change));
    expect(screen.getByText(says)).toBeVisible();
    expect(screen.queryByRole('combobox')).toBeNull();
    expect(screen.queryByRole('img')).toBeNull();
  });

  test('says so where a slippery bolt would be overloaded', async () => {
    const high = figureFrom({ min: 9, max: 10 });
    await unfold(jointStep(), high);
    await userEvent.selectOptions(screen.getByLabelText('Stamp on the bolt’s head'), '8.8');
    expect(screen.getByText(/stretches for good\.$/)).toBeVisible();
  });

  test('waits for the figure', async () => {
    render(<GreaseAdvice step={jointStep()} figure={undefined} />);
    await userEvent.click(screen.getByText('Why grease matters'));
    expect(screen.getByText(/the figure comes first/)).toBeVisible();
  });

  test('has nothing to say where nothing is tightened', () => {
    const { container } = render(<GreaseAdvice step={plainStep} figure={undefined} />);
    expect(container).toBeEmptyDOMElement();
  });
});
