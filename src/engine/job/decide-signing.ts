/** Commands that somebody signs: built, checked, sent back, handed over. */

import { ok, type Result, refuse } from '../base';
import type { Command, Signing } from './command';
import type { Deciders } from './decider';
import type { EventOf, Meaning } from './event.schema';
import type { JobRefusal } from './refusal';
import type { JobState } from './state';
import { pointById, stepById } from './status';
import { topicsFor } from './told';

type SigningCommands = 'sign-built' | 'sign-checked' | 'send-back' | 'hand-over';

export const signingDeciders: Deciders<SigningCommands> = {
  'sign-built': ({ signing, stamp }) => asEvents(signed(signing, 'built', stamp)),

  'sign-checked': ({ signing, stamp }) => asEvents(signed(signing, 'checked', stamp)),

  'send-back': ({ steps, points, reason }, state) => {
    if (reason.trim() === '') return refuse({ code: 'reason-missing' });
    if (steps.length + points.length === 0) return refuse({ code: 'nothing-named' });
    const step = steps.find((id) => stepById(state, id) === undefined);
    if (step !== undefined) return refuse({ code: 'step-unknown', step });
    const point = points.find((id) => pointById(state, id) === undefined);
    if (point !== undefined) return refuse({ code: 'point-unknown', point });
    return ok([
      { kind: 'sent-back', v: 1, steps: [...steps], points: [...points], reason: reason.trim() },
    ]);
  },

  'hand-over': ({ customer, told, firstCheck, signing, stamp }, state) => {
    if (customer === '' || signing.customer !== customer)
      return refuse({ code: 'customer-missing' });
    const untold = topicsToTell(state).filter((topic) => !told.includes(topic));
    if (untold.length > 0) return refuse({ code: 'customer-not-told', topics: untold });
    if (firstCheck <= stamp.on) return refuse({ code: 'first-check-not-after-hand-over' });
    const signature = signed(signing, 'received', stamp);
    if (!signature.ok) return signature;
    return ok([
      signature.value,
      {
        kind: 'handed-over',
        v: 1,
        customer,
        told: [...told],
        firstCheck,
        frontBrakeLever: state.plan?.frontBrakeLever ?? 'none',
      },
    ]);
  },
};

/** What this customer must have been told before the bike is theirs. */
export function topicsToTell(state: JobState): readonly string[] {
  if (state.plan === undefined) return [];
  return topicsFor(state.plan, findingsToTell(state));
}

function findingsToTell(state: JobState): boolean {
  return state.findings.some(
    (finding) =>
      finding.allowed !== undefined ||
      (finding.severity === 'tell-customer' && finding.closed === undefined),
  );
}

/** A signature must cover exactly what is in the log now: what came in between has not been signed. */
function signed(
  signing: Signing,
  meaning: Meaning,
  stamp: Command['stamp'],
): Result<EventOf<'signed'>, JobRefusal> {
  if (signing.meaning !== meaning) return refuse({ code: 'signature-of-another-meaning' });
  if (meaning !== 'received' && (signing.name ?? '').trim() === '')
    return refuse({ code: 'signature-name-missing' });
  if (signing.heads.join() !== stamp.heads.join()) return refuse({ code: 'signature-overtaken' });
  return ok({ kind: 'signed', v: 1, ...signing, meaning, heads: [...signing.heads] });
}

function asEvents<R extends JobRefusal>(
  event: Result<EventOf<'signed'>, R>,
): Result<readonly EventOf<'signed'>[], R> {
  return event.ok ? ok([event.value]) : event;
}
