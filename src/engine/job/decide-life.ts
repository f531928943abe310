/** Commands that begin, hold, describe and amend a job. */

import { ok, refuse } from '../base';
import { digestOf } from '../integrity';
import type { Deciders } from './decider';

type LifeCommands =
  | 'receive-box'
  | 'describe-bike'
  | 'set-due'
  | 'open-job'
  | 'check-contents'
  | 'hold-job'
  | 'resume-job'
  | 'amend-record';

export const lifeDeciders: Deciders<LifeCommands> = {
  'receive-box': ({ bike, due, delivery, cartonDamage, photos = [] }) =>
    ok([{ kind: 'box-received', v: 1, bike, due, delivery, cartonDamage, photos: [...photos] }]),

  'describe-bike': ({ bike }) => ok([{ kind: 'bike-described', v: 1, bike }]),

  'set-due': ({ due }) => ok([{ kind: 'due-set', v: 1, due }]),

  'open-job': ({ plan }, state) => {
    if (state.bike === undefined || digestOf(plan.bike) !== digestOf(state.bike))
      return refuse({ code: 'plan-for-another-bike' });
    return ok([{ kind: 'job-opened', v: 1, plan: digestOf(plan), market: plan.market }]);
  },

  'check-contents': ({ parts }, state) => {
    const known = new Set(state.plan?.contents.map(({ id }) => id));
    const stranger = parts.find(({ part }) => !known.has(part));
    if (stranger !== undefined) return refuse({ code: 'part-unknown', part: stranger.part });
    if (parts.length === 0) return refuse({ code: 'nothing-named' });
    return ok([{ kind: 'contents-checked', v: 1, parts: parts.map((part) => ({ ...part })) }]);
  },

  'hold-job': ({ for: reason, note }, state) => {
    if (reason === 'other' && note.trim() === '') return refuse({ code: 'reason-missing' });
    if (state.hold !== undefined)
      return refuse({ code: 'job-on-hold', for: state.hold.for, note: state.hold.note });
    return ok([{ kind: 'job-held', v: 1, for: reason, note: note.trim() }]);
  },

  'resume-job': () => ok([{ kind: 'job-resumed', v: 1 }]),

  'amend-record': ({ text }) =>
    text.trim() === ''
      ? refuse({ code: 'reason-missing' })
      : ok([{ kind: 'record-amended', v: 1, text: text.trim() }]),
};
