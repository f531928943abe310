/** Everything the printed hand-over page says, as data: no sentences, no layout. */

import type { Bike } from '../bike';
import type { Severity } from '../inspection';
import { type ClaimedTime, digestOf } from '../integrity';
import {
  type JobState,
  lastOfEachBolt,
  latestMeasure,
  type Meaning,
  pointById,
  pointsOf,
  recordCode,
  stepById,
  stepsOf,
  type Tightened,
} from '../job';
import type { PlanStep } from '../plan';
import type { Figure, ReadingVerdict } from '../torque';

export interface SheetInput {
  readonly job: string;
  readonly state: JobState;
  /** Heads of the log, and how many entries it has. */
  readonly heads: readonly string[];
  readonly entries: number;
  readonly shop: string;
  readonly nameOf: (person: string) => string;
  /** Absent when the customer's details have been erased. */
  readonly customer?: string | undefined;
  /** Today, for a sheet printed before the hand-over. */
  readonly on: string;
}

export interface SheetJoint {
  readonly name: string;
  readonly bolts: number;
  readonly thread: string;
  readonly figure: Figure;
  readonly onScale: number;
  readonly unit: string;
  readonly wrench: string;
  readonly adapter?: string | undefined;
  /** What the wrench showed at each bolt, on its own scale, where it was read; the last reading of each. */
  readonly readings?: readonly SheetReading[];
  /** Where an apprentice tightened it: who did, and who looked at it after them. */
  readonly secondEyes?: { readonly by: string; readonly confirmedBy?: string | undefined };
}

export interface SheetReading {
  readonly bolt: number;
  readonly onScale: number;
  readonly judged: ReadingVerdict;
}

export interface SheetFinding {
  readonly severity: Severity;
  readonly text: string;
  readonly closed?: string | undefined;
  readonly allowed?: { readonly by: string; readonly reason: string } | undefined;
}

/** What a step measures, with the value taken last, there or on the walk. */
export interface SheetMeasure {
  readonly step: string;
  readonly measure: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

export interface SheetSignature {
  readonly meaning: Meaning;
  readonly name: string | undefined;
  /** Who handed the bike over, beside who received it. */
  readonly from?: string | undefined;
  readonly at: ClaimedTime;
  readonly strokes?: string | undefined;
}

export interface Sheet {
  readonly shop: string;
  readonly date: string;
  readonly bike: Bike;
  readonly record: string;
  readonly frontBrakeLever: 'left' | 'right' | 'none';
  readonly firstCheck: string | undefined;
  /** kPa, as set and kept. */
  readonly tyres: { readonly front?: number | undefined; readonly rear?: number | undefined };
  readonly joints: readonly SheetJoint[];
  /** Joints whose failure does not hurt: counted, not listed. */
  readonly otherJoints: number;
  readonly measures: readonly SheetMeasure[];
  readonly steps: number;
  readonly points: { readonly looked: number; readonly adjusted: readonly string[] };
  readonly findings: readonly SheetFinding[];
  readonly kept: readonly string[];
  readonly axles: readonly Bike['front']['axle'][];
  readonly hasDisc: boolean;
  readonly signatures: readonly SheetSignature[];
  readonly amendments: readonly {
    readonly text: string;
    readonly by: string;
    readonly at: ClaimedTime;
  }[];
  /** Digest of the head of the log: the seal that makes any change visible. */
  readonly seal: string;
  readonly entries: number;
  readonly isSealed: boolean;
}

/**
 * The hand-over page of one job. Undefined until its job has been opened. Pressures in kPa, torque in N·m and on the
 * wrench's own scale; only joints whose failure can hurt the rider (class A) and those on a usual range are listed.
 */
export function sheetOf(input: SheetInput): Sheet | undefined {
  const { state, nameOf } = input;
  const { bike, plan } = state;
  if (bike === undefined || plan === undefined) return undefined;
  const tightened = stepsOf(state).filter(
    ({ joint }) => joint && state.joints[joint.id]?.tightened,
  );
  const listed = tightened.filter((step) => isListed(state, step));
  return {
    shop: input.shop,
    date: state.handedOver?.at.claimed ?? input.on,
    bike,
    record: recordCode(input.job),
    frontBrakeLever: plan.frontBrakeLever,
    firstCheck: state.handedOver?.firstCheck,
    tyres: {
      front: pressureOf(state, 'front'),
      rear: pressureOf(state, 'rear'),
    },
    joints: listed.flatMap((step) => jointRow(input, step)),
    otherJoints: tightened.length - listed.length,
    measures: measureRows(state),
    steps: Object.values(state.steps).filter(({ standing }) => standing === 'done').length,
    points: {
      looked: pointsOf(state).filter(({ id }) => state.points[id] !== undefined).length,
      adjusted: Object.entries(state.points)
        .filter(([, mark]) => mark.verdict === 'adjusted')
        .map(([point, mark]) => mark.note ?? pointById(state, point)?.name ?? point),
    },
    findings: state.findings.map(({ severity, text, closed, allowed }) => ({
      severity,
      text,
      closed: closed?.how,
      allowed: allowed && { by: nameOf(allowed.by), reason: allowed.reason },
    })),
    kept: plan.contents
      .filter(({ id, keep }) => keep && state.contents[id]?.state === 'present')
      .map(({ name }) => name),
    axles: [...new Set([bike.front.axle, bike.rear.axle])],
    hasDisc: [bike.front.brake, bike.rear.brake].some((brake) => brake.endsWith('-disc')),
    signatures: signaturesOf(input),
    amendments: state.amendments.map(({ text, by, at }) => ({ text, by: nameOf(by), at })),
    seal: input.heads.length === 1 ? (input.heads[0] ?? '') : digestOf(input.heads),
    entries: input.entries,
    isSealed: state.handedOver !== undefined,
  };
}

function isListed(state: JobState, { joint }: PlanStep): boolean {
  if (joint === undefined) return false;
  return joint.risk === 'A' || state.joints[joint.id]?.tightened?.figure.source.kind === 'usual';
}

function jointRow({ state, nameOf }: SheetInput, { joint }: PlanStep): readonly SheetJoint[] {
  const { tightened, confirmed } = (joint && state.joints[joint.id]) ?? {};
  if (joint === undefined || tightened === undefined) return [];
  const { figure, onScale, wrench, adapter, readings } = tightened;
  const { name, bolts, thread } = joint;
  return [
    {
      name,
      bolts,
      thread,
      figure,
      onScale,
      unit: wrench.unit,
      wrench: wrench.id,
      adapter: adapter?.name,
      ...(readings && { readings: readingsOnScale(tightened) }),
      ...(joint.risk === 'A' &&
        tightened.byLearner && {
          secondEyes: {
            by: nameOf(tightened.by),
            confirmedBy: confirmed && nameOf(confirmed.by),
          },
        }),
    },
  ];
}

/** The scale's own number stands to its torque as the set point's does. */
function readingsOnScale(tightened: Tightened): readonly SheetReading[] {
  const { onScale, setPoint, readings = [] } = tightened;
  return [...lastOfEachBolt(readings)]
    .sort((a, b) => a.bolt - b.bolt)
    .map(({ bolt, value, judged }) => ({ bolt, onScale: value * (onScale / setPoint), judged }));
}

/** The pressure of a wheel as it was gauged last: the catalogue has one step for each tyre. */
function pressureOf(state: JobState, wheel: 'front' | 'rear'): number | undefined {
  const step = stepById(state, `${wheel}-tyre-pressure`);
  const measure = step?.measures.find(({ unit }) => unit === 'kPa');
  return measure && latestMeasure(state, measure.id)?.value;
}

function measureRows(state: JobState): readonly SheetMeasure[] {
  return stepsOf(state).flatMap((step) =>
    step.measures.flatMap(({ id, name, unit, limit }) => {
      const mark = latestMeasure(state, id);
      if (mark === undefined) return [];
      const { min, max } = limit;
      return [{ step: step.id, measure: id, name, value: mark.value, unit, min, max }];
    }),
  );
}

/** The last standing signature of each meaning, in the order built, checked, received. */
function signaturesOf({ state, nameOf, customer }: SheetInput): readonly SheetSignature[] {
  return (['built', 'checked', 'received'] as const).flatMap<SheetSignature>((meaning) => {
    const mark = state.signatures.findLast((one) => one.meaning === meaning && !one.stale);
    if (mark === undefined) return [];
    const { at, strokes } = mark;
    if (meaning === 'received')
      return [{ meaning, name: customer, from: nameOf(mark.by), at, strokes }];
    return [{ meaning, name: mark.name ?? nameOf(mark.by), at, strokes }];
  });
}
