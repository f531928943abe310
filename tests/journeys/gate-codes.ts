/** Every gate there is: the compiler says when one is missing here. */

import type { Gate } from '../../src/engine/job';

const codes: Readonly<Record<Gate['code'], true>> = {
  'box-not-received': true,
  'box-already-received': true,
  'job-not-open': true,
  'job-already-open': true,
  'job-on-hold': true,
  'job-not-on-hold': true,
  'record-sealed': true,
  'record-not-sealed': true,
  'step-waits-for-steps': true,
  'step-waits-for-parts': true,
  'point-waits-for-steps': true,
  'contents-unchecked': true,
  'steps-unfinished': true,
  'points-unsettled': true,
  'findings-open': true,
  'not-signed-as-built': true,
  'already-signed-as-built': true,
  'not-signed-as-checked': true,
  'already-signed-as-checked': true,
  'builder-cannot-check': true,
  'apprentice-cannot-check': true,
  'joints-unconfirmed': true,
  'cannot-confirm-joint': true,
  'supervisor-only': true,
};

export const gateCodes = Object.keys(codes) as readonly Gate['code'][]; // the keys of a complete record
