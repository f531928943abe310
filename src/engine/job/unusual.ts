/** What is unusual about a build: what the second checker should look at first. */

import type { Severity } from '../inspection';
import type { Figure } from '../torque';
import { isFarFromUsual } from './far-figure';
import { lastOfEachBolt } from './pass-readings';
import type { JobState } from './state';
import { stepById, stepsOf } from './status';

export type Unusual =
  | {
      readonly code: 'unusual-usual-range';
      readonly step: string;
      readonly joint: string;
      readonly acceptedBy: string;
    }
  | {
      readonly code: 'unusual-figure-far';
      readonly step: string;
      readonly joint: string;
      readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
    }
  | {
      readonly code: 'unusual-reopened';
      readonly step: string;
      readonly times: number;
      readonly reason: string;
    }
  | {
      readonly code: 'unusual-part-damaged';
      readonly part: string;
      readonly note?: string | undefined;
    }
  | {
      readonly code: 'unusual-measure-undecided';
      readonly at: string;
      readonly measure: string;
      readonly value: number;
    }
  | {
      readonly code: 'unusual-readings';
      readonly step: string;
      readonly joint: string;
      /** Bolts whose last reading was too near the figure's end to tell. */
      readonly undecided: readonly number[];
      /** Bolts that were once read above the figure, and brought right. */
      readonly above: readonly number[];
    }
  | {
      readonly code: 'unusual-learner-joint';
      readonly joint: string;
      readonly by: string;
      /** Who looked at it; nobody yet while the build is not signed. */
      readonly confirmedBy?: string | undefined;
    }
  | {
      readonly code: 'unusual-point-adjusted';
      readonly point: string;
      readonly note?: string | undefined;
    }
  | {
      readonly code: 'unusual-finding';
      readonly finding: string;
      readonly severity: Severity;
      readonly text: string;
      readonly closed?: string | undefined;
      readonly allowed?: string | undefined;
      /** The supervisor who let the bike go with it. */
      readonly allowedBy?: string | undefined;
    }
  | { readonly code: 'unusual-carton'; readonly damage: string };

export function unusualIn(state: JobState): readonly Unusual[] {
  return [
    ...findings(state),
    ...usualRanges(state),
    ...farFigures(state),
    ...learnersJoints(state),
    ...redone(state),
    ...adjusted(state),
    ...damagedParts(state),
    ...undecided(state),
    ...readings(state),
    ...(state.received?.cartonDamage === undefined
      ? []
      : [{ code: 'unusual-carton', damage: state.received.cartonDamage } as const]),
  ];
}

function findings(state: JobState): readonly Unusual[] {
  return state.findings.map(({ id, severity, text, closed, allowed }) => ({
    code: 'unusual-finding',
    finding: id,
    severity,
    text,
    closed: closed?.how,
    allowed: allowed?.reason,
    allowedBy: allowed?.by,
  }));
}

function usualRanges(state: JobState): readonly Unusual[] {
  return stepsOf(state).flatMap(({ id, joint }) => {
    const source = joint && state.joints[joint.id]?.tightened?.figure.source;
    if (joint === undefined || source?.kind !== 'usual') return [];
    return [
      {
        code: 'unusual-usual-range',
        step: id,
        joint: joint.id,
        acceptedBy: source.acceptedBy ?? '',
      } as const,
    ];
  });
}

function farFigures(state: JobState): readonly Unusual[] {
  return stepsOf(state).flatMap((step) => {
    const figure = step.joint && state.joints[step.joint.id]?.tightened?.figure;
    if (step.joint === undefined || !isFarFromUsual(step, figure)) return [];
    const { min, max, target } = figure ?? {};
    const limits = { ...(min && { min }), ...(max && { max }), ...(target && { target }) };
    return [{ code: 'unusual-figure-far', step: step.id, joint: step.joint.id, figure: limits }];
  });
}

/** Class A joints that somebody still learning has tightened, and who confirmed each. */
function learnersJoints(state: JobState): readonly Unusual[] {
  return stepsOf(state).flatMap(({ joint }) => {
    const mark = joint && state.joints[joint.id];
    if (joint?.risk !== 'A' || mark?.tightened?.byLearner !== true) return [];
    const { tightened, confirmed } = mark;
    return [
      {
        code: 'unusual-learner-joint',
        joint: joint.id,
        by: tightened.by,
        confirmedBy: confirmed?.by,
      } as const,
    ];
  });
}

function redone(state: JobState): readonly Unusual[] {
  return Object.entries(state.steps).flatMap(([step, mark]) => {
    if (mark.done.length < 2 || stepById(state, step) === undefined) return [];
    const reason = mark.disturbed?.reason ?? mark.reason ?? '';
    return [{ code: 'unusual-reopened', step, times: mark.done.length, reason } as const];
  });
}

function adjusted(state: JobState): readonly Unusual[] {
  return Object.entries(state.points)
    .filter(([, mark]) => mark.verdict === 'adjusted')
    .map(([point, { note }]) => ({ code: 'unusual-point-adjusted', point, note }));
}

function damagedParts(state: JobState): readonly Unusual[] {
  return Object.entries(state.contents)
    .filter(([, mark]) => mark.state === 'damaged')
    .map(([part, { note }]) => ({ code: 'unusual-part-damaged', part, note }));
}

function undecided(state: JobState): readonly Unusual[] {
  return Object.entries(state.measures)
    .filter(([, mark]) => mark.judged === 'undecided')
    .map(([key, { value }]) => {
      const [at = '', measure = ''] = key.split('.');
      return { code: 'unusual-measure-undecided', at, measure, value };
    });
}

function readings(state: JobState): readonly Unusual[] {
  return stepsOf(state).flatMap(({ id, joint }) => {
    const mark = joint && state.joints[joint.id];
    if (joint === undefined || mark?.tightened === undefined) return [];
    const undecided = lastOfEachBolt(mark.tightened.readings ?? [])
      .filter(({ judged }) => judged === 'undecided')
      .map(({ bolt }) => bolt);
    const above = mark.passes.flatMap(({ setPoint, readings: read = [] }) =>
      read.flatMap(({ bolt, value, judged }) =>
        judged === 'outside' && value > setPoint ? [bolt] : [],
      ),
    );
    if (undecided.length === 0 && above.length === 0) return [];
    return [
      {
        code: 'unusual-readings',
        step: id,
        joint: joint.id,
        undecided,
        above: [...new Set(above)],
      },
    ];
  });
}
