import { expect, test } from 'vitest';
import { topics, topicsFor, topicsToTell } from '../../../src/engine/job';
import { doing, opened, sunniva } from '../../support/given-when-then';
import { seedPlan, smallPlan } from '../../support/small-job';

const always = [
  'fit',
  'load-limit',
  'brake-levers',
  'axles',
  'before-every-ride',
  'first-check',
  'insertion-marks',
];

// Disc pads are bedded in before they hold; rim brakes are not: common practice, no source.
test('[J19] a bike with disc brakes has bedding in told of, one with rim brakes has not', () => {
  const mountain = topicsFor(seedPlan('mountain'), false);
  expect([...mountain].sort()).toEqual([...always, 'bedding-in'].sort());
  expect([...topicsFor(seedPlan('town'), false)].sort()).toEqual([...always].sort());
  expect(topicsFor(seedPlan('mountain'), true)).toEqual(topics);
});

test('[J19] a finding is told of when it was let go or is for the customer, not when put right', () => {
  const raise = (severity: 'stop-ride' | 'tell-customer') =>
    doing(opened(smallPlan), { kind: 'raise-finding', finding: 'f', severity, text: 'A crack.' });
  const close = { kind: 'close-finding', finding: 'f', how: 'Mended.' } as const;
  const allow = { kind: 'allow-finding', finding: 'f', reason: 'Known.' } as const;
  expect(topicsToTell(opened(smallPlan).state)).not.toContain('findings');
  expect(topicsToTell(raise('tell-customer').state)).toContain('findings');
  expect(topicsToTell(doing(raise('tell-customer'), close).state)).not.toContain('findings');
  expect(topicsToTell(doing(raise('stop-ride'), close).state)).not.toContain('findings');
  expect(topicsToTell(doing(raise('stop-ride'), allow, sunniva).state)).toContain('findings');
});
