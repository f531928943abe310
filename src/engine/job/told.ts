/** What the customer must be told before the bike is theirs, for this bike. */

import type { JobPlan } from './job-plan.schema';

export const topics = [
  'fit',
  'load-limit',
  'brake-levers',
  'axles',
  'before-every-ride',
  'bedding-in',
  'first-check',
  'insertion-marks',
  'findings',
] as const;

export type Topic = (typeof topics)[number];

/** The topics that this bike needs; `findings` only where the customer has to know of something. */
export function topicsFor(plan: JobPlan, hasFindingsToTell: boolean): readonly Topic[] {
  const { bike } = plan;
  const hasDisc = [bike.front.brake, bike.rear.brake].some((brake) => brake.endsWith('-disc'));
  return topics.filter((topic) => {
    if (topic === 'bedding-in') return hasDisc;
    if (topic === 'findings') return hasFindingsToTell;
    return true;
  });
}
