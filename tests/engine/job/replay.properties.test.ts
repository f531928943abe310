import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Entry, headsOf } from '../../../src/engine/integrity';
import {
  type Asked,
  emptyJob,
  eventSchema,
  evolve,
  jobStatuses,
  openSteps,
  replay,
  statusOf,
  unconfirmedJoints,
  unsettledPoints,
} from '../../../src/engine/job';
import { type Sheet, sheetOf } from '../../../src/engine/sheet';
import {
  asking,
  doing,
  imre,
  ines,
  met,
  nothingYet,
  opened,
  type Played,
  petra,
  signing,
  sunniva,
} from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  handedOver,
  handOver,
  nextTowards,
  signedChecked,
  smallPlan,
  walked,
} from '../../support/small-job';

const people = [imre, petra, sunniva, ines];

/** Everything that somebody might ask for where a job stands; much of it will be refused. */
function thinkable(job: Played): readonly Asked[] {
  const { state, entries } = job;
  const name = `finding-${entries.length}`;
  const finding = { finding: name, severity: 'before-hand-over', text: 'It is loose.' } as const;
  return [
    ...openSteps(state).map(({ id }) => nextTowards(job, id)),
    ...unsettledPoints(state).map(
      ({ id }): Asked => ({ kind: 'look-at-point', point: id, verdict: 'good', value: 80 }),
    ),
    ...['clamp', 'axle', 'stem'].map(
      (step): Asked => ({ kind: 'reopen-step', step, reason: 'It was loosened.' }),
    ),
    ...state.findings.flatMap(({ id }): Asked[] => [
      { kind: 'close-finding', finding: id, how: 'Put right.' },
      { kind: 'allow-finding', finding: id, reason: 'Agreed.' },
    ]),
    ...unconfirmedJoints(state).map((joint): Asked => ({ kind: 'confirm-joint', joint })),
    { kind: 'receive-box', bike: smallPlan.bike, cartonDamage: 'A hole.' },
    { kind: 'describe-bike', bike: smallPlan.bike },
    { kind: 'open-job', plan: smallPlan },
    { kind: 'check-contents', parts: [{ part: 'front-wheel', state: 'missing' }] },
    { kind: 'check-contents', parts: [{ part: 'front-wheel', state: 'present' }] },
    { kind: 'set-due', due: '2026-03-09T17:00' },
    { kind: 'set-step-aside', step: 'post', reason: 'Later.' },
    { kind: 'take-measure', at: 'post', measure: 'insertion', value: 40 },
    { kind: 'look-at-point', point: 'paint', verdict: 'wrong', finding },
    { kind: 'look-at-point', point: 'paint', verdict: 'adjusted', note: 'Polished.' },
    { kind: 'raise-finding', ...finding },
    { kind: 'hold-job', for: 'tool', note: '' },
    { kind: 'resume-job' },
    { kind: 'sign-built', signing: signing(job, 'built') },
    { kind: 'sign-checked', signing: signing(job, 'checked') },
    { kind: 'send-back', steps: ['stem'], points: ['paint'], reason: 'Not level.' },
    handOver(job),
    { kind: 'amend-record', text: 'A word more.' },
  ];
}

interface Turn {
  readonly device: number;
  readonly meets: number | null;
  readonly person: number;
  readonly choice: number;
}

const starts = [
  nothingYet(smallPlan),
  opened(smallPlan),
  contentsChecked(opened(smallPlan)),
  walked(built(opened(smallPlan))),
  walked(built(opened(smallPlan), ines), ines),
  builtAndSigned(),
  signedChecked(builtAndSigned()),
  handedOver(),
];

/** Any log that people at up to three tablets could write, exchanging what they have at any time. */
const anyJob = fc
  .record({
    start: fc.constantFrom(...starts),
    turns: fc.array(
      fc.record<Turn>({
        device: fc.nat(2),
        meets: fc.option(fc.nat(2)),
        person: fc.nat(3),
        choice: fc.nat(999),
      }),
      { minLength: 1, maxLength: 30 },
    ),
  })
  .map(({ start, turns }) => {
    const tablets: Played[] = [start, start, start];
    for (const { device, meets, person, choice } of turns) {
      const own = tablets[device] ?? start;
      const other = meets === null ? own : (tablets[meets] ?? own);
      const job = other.entries === own.entries ? own : met(own, other);
      const asked = thinkable(job);
      const wish = asked[choice % asked.length] as Asked; // never empty
      const who = people[person] ?? imre;
      tablets[device] = asking(job, wish, who).ok ? doing(job, wish, who, `tablet-${device}`) : job;
    }
    return [...new Set(tablets.flatMap(({ entries }) => entries))];
  });

const shuffled = anyJob.chain((log) =>
  fc.record({
    log: fc.constant(log),
    other: fc
      .tuple(
        fc.shuffledSubarray(log, { minLength: log.length }),
        fc.array(log.length === 0 ? fc.constant(undefined) : fc.constantFrom(...log)),
      )
      .map((parts) => parts.flat().filter((entry): entry is Entry => entry !== undefined)),
  }),
);

const runs = { numRuns: 100 };

function sheet(entries: readonly Entry[]): Sheet | undefined {
  return sheetOf({
    job: 'job-1',
    state: replay(entries, smallPlan),
    heads: headsOf(entries),
    entries: new Set(entries.map(({ id }) => id)).size,
    shop: 'A shop',
    nameOf: (person) => person,
    on: '2026-03-02',
  });
}

test('[J1] any order of the same entries, some of them twice, is the same state', () => {
  fc.assert(
    fc.property(shuffled, ({ log, other }) => {
      expect(replay(other, smallPlan)).toEqual(replay(log, smallPlan));
    }),
    runs,
  );
});

test('[S4] any order of the same entries, some of them twice, is the same sheet', () => {
  fc.assert(
    fc.property(shuffled, ({ log, other }) => {
      expect(JSON.stringify(sheet(other))).toBe(JSON.stringify(sheet(log)));
    }),
    runs,
  );
});

test('[J2] folding on from any point is folding from scratch', () => {
  fc.assert(
    fc.property(anyJob, fc.nat(), (log, cut) => {
      const order = [...log].sort(
        (a, b) => a.lamport - b.lamport || (a.device < b.device ? -1 : 1),
      );
      const kept = order.slice(0, cut % (order.length + 1));
      const later = order.slice(kept.length);
      expect(later.reduce(evolve, replay(kept, smallPlan))).toEqual(replay(log, smallPlan));
      expect(order.reduce(evolve, emptyJob(smallPlan))).toEqual(replay(log, smallPlan));
    }),
    runs,
  );
});

test('[J4] any log leaves a job in one of six states', () => {
  fc.assert(
    fc.property(anyJob, (log) => {
      expect(jobStatuses).toContain(statusOf(replay(log, smallPlan)));
    }),
    runs,
  );
});

test('[J27] every event that any decision adds passes the event schema, unchanged', () => {
  const kinds = new Set<string>();
  fc.assert(
    fc.property(anyJob, (log) => {
      for (const { event } of log) {
        const parsed = eventSchema.safeParse(event);
        expect(parsed.error).toBeUndefined();
        expect(parsed.data).toEqual(event);
        kinds.add(event.kind);
      }
    }),
    { numRuns: 400, seed: 20260302 },
  );
  // Every kind of event came up, or this property would say less than it seems to.
  expect([...kinds].sort()).toEqual(
    eventSchema.def.options.map(({ shape }) => shape.kind.def.values[0] as string).sort(),
  );
});
