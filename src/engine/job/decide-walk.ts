/** Commands on the walk: points and findings. */

import { ok, type Result, refuse } from '../base';
import type { RoutePoint } from '../inspection';
import type { AskedOf } from './command';
import type { Deciders } from './decider';
import type { EventOf, JobEvent } from './event.schema';
import { measureEvent } from './measuring';
import type { JobRefusal } from './refusal';
import type { Finding, JobState } from './state';
import { pointById } from './status';

type WalkCommands = 'look-at-point' | 'raise-finding' | 'close-finding' | 'allow-finding';

type Answer = Result<readonly JobEvent[], JobRefusal>;

export const walkDeciders: Deciders<WalkCommands> = {
  'look-at-point': (command, state) => {
    const point = pointById(state, command.point);
    if (point === undefined) return refuse({ code: 'point-unknown', point: command.point });
    if (command.verdict === 'wrong' && command.finding === undefined)
      return refuse({ code: 'finding-missing', point: point.id });
    if (needsValue(point) && command.verdict !== 'wrong' && command.value === undefined)
      return refuse({ code: 'point-needs-value', point: point.id });
    return lookAtPoint(command, state);
  },

  'raise-finding': ({ at, finding, severity, text, photos = [] }, state) => {
    if (text.trim() === '') return refuse({ code: 'reason-missing' });
    if (state.findings.some(({ id }) => id === finding))
      return refuse({ code: 'finding-already-raised', finding });
    return ok([raised({ finding, severity, text, photos }, at)]);
  },

  'close-finding': ({ finding, how }, state) => {
    if (how.trim() === '') return refuse({ code: 'reason-missing' });
    return onOpenFinding(state, finding, () => [
      { kind: 'finding-closed', v: 1, finding, how: how.trim() },
    ]);
  },

  'allow-finding': ({ finding, reason }, state) => {
    if (reason.trim() === '') return refuse({ code: 'reason-missing' });
    return onOpenFinding(state, finding, () => [
      { kind: 'finding-allowed', v: 1, finding, reason: reason.trim() },
    ]);
  },
};

/** A limit that nobody measured against says nothing. */
function needsValue({ measure }: RoutePoint): boolean {
  return measure?.limit.min !== undefined || measure?.limit.max !== undefined;
}

function lookAtPoint(command: AskedOf<'look-at-point'>, state: JobState): Answer {
  const { point, verdict, note, value, finding } = command;
  const events: JobEvent[] = [];
  const measure = pointById(state, point)?.measure;
  if (measure !== undefined && value !== undefined) {
    const taken = measureEvent(state, point, measure.id, value);
    if (!taken.ok) return taken;
    if (taken.value.judged === 'outside' && verdict !== 'wrong') {
      const { min, max } = measure.limit;
      return refuse({
        code: 'measure-outside-limits',
        measure: measure.name,
        value,
        unit: measure.unit,
        min,
        max,
      });
    }
    events.push(taken.value);
  }
  events.push({ kind: 'point-looked-at', v: 1, point, verdict, note: note?.trim() || undefined });
  if (verdict === 'wrong' && finding !== undefined) {
    if (finding.text.trim() === '') return refuse({ code: 'reason-missing' });
    if (state.findings.some(({ id }) => id === finding.finding))
      return refuse({ code: 'finding-already-raised', finding: finding.finding });
    events.push(raised(finding, point));
  }
  return ok(events);
}

function raised(
  { finding, severity, text, photos = [] }: Omit<AskedOf<'raise-finding'>, 'kind' | 'at'>,
  at: string | undefined,
): EventOf<'finding-raised'> {
  return {
    kind: 'finding-raised',
    v: 1,
    finding,
    at,
    severity,
    text: text.trim(),
    photos: [...photos],
  };
}

function onOpenFinding(
  state: JobState,
  id: string,
  then: (finding: Finding) => readonly JobEvent[],
): Answer {
  const finding = state.findings.find((candidate) => candidate.id === id);
  if (finding === undefined) return refuse({ code: 'finding-unknown', finding: id });
  if (finding.closed !== undefined) return refuse({ code: 'finding-already-closed', finding: id });
  return ok(then(finding));
}
