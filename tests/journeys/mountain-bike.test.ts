/** A hardtail from its box to its rider: every gate refuses once on the way, and rework is shown good again. */

import { beforeAll, describe, expect, test } from 'vitest';
import type { Bike } from '../../src/engine/bike';
import { verifyLog } from '../../src/engine/integrity';
import {
  pointById,
  type Signing,
  standingOfStep,
  statusOf,
  stepById,
  stepsOf,
  topicsToTell,
  unusualIn,
} from '../../src/engine/job';
import { build, lookedAt, walk } from '../../src/state';
import { must } from '../support/test-app';
import { gateCodes } from './gate-codes';
import { openWorkshop, type Workshop } from './workshop';

let shop: Workshop;
let bike: Bike;
let job: string;

const unsigned: Signing = { meaning: 'built', heads: [], jws: '' };
const handingOver = {
  customer: { name: 'Ottilie Fenwick', contact: '01632 960188' },
  firstCheck: '2027-01-06',
  strokes: '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0L9 9"/></svg>',
};

beforeAll(async () => {
  shop = await openWorkshop();
  const hardtail = shop.seeds.bikes.find(({ model }) => model === 'Hardtail 29');
  if (hardtail === undefined) throw new Error('the seeds have a hardtail');
  bike = hardtail;
});

describe('given a sealed box', () => {
  test('when nobody has received it, then nothing can be done to it', async () => {
    await shop.tries('builder', 'no-such-job', { kind: 'resume-job' }, 'box-not-received');
  });

  test('when it is received, then it is boxed, and cannot be received twice', async () => {
    const box = { bike, due: '2026-11-28T11:00', cartonDamage: 'One corner crushed.' };
    job = must(await shop.at('builder').receiveBox(box));
    expect(statusOf(await shop.state(job))).toBe('boxed');
    await shop.tries('builder', job, { kind: 'receive-box', ...box }, 'box-already-received');
  });

  test('when its job is not open, then there is no step to do and no hold to end', async () => {
    await shop.tries('builder', job, { kind: 'do-step', step: 'unpack' }, 'job-not-open');
    await shop.tries('builder', job, { kind: 'resume-job' }, 'job-not-on-hold');
  });
});

describe('given an open job', () => {
  test('when it is opened, then its plan is frozen', async () => {
    const state = must(await shop.at('builder').startJob(job));
    expect(statusOf(state)).toBe('on-the-stand');
    expect(stepById(state, 'close-front-quick-release')).toBeDefined();
    expect(stepById(state, 'quill-wedge')).toBeUndefined();
    shop.refuses(await shop.app.startJob(job), 'job-already-open');
    await shop.tries('builder', job, { kind: 'describe-bike', bike }, 'job-already-open');
    await shop.tries('builder', job, { kind: 'amend-record', text: 'x' }, 'record-not-sealed');
  });

  test('when nothing is done, then no step or point runs ahead and nobody signs', async () => {
    const early = { kind: 'do-step', step: 'bar-alignment' } as const;
    const { steps } = await shop.tries('builder', job, early, 'step-waits-for-steps');
    expect(steps).toContain('steerer-clamp'); // common practice, no source: the clamp comes first
    const look = { kind: 'look-at-point', point: 'headset', verdict: 'good' } as const;
    const point = await shop.tries('builder', job, look, 'point-waits-for-steps');
    expect(point.steps).toEqual(expect.arrayContaining(['headset-preload', 'steerer-clamp']));
    const { parts } = shop.refuses(await shop.sign('builder', job, 'built'), 'contents-unchecked');
    expect(parts).toContain('brake-spacer');
  });

  test('when the pedals are missing, then only the pedals wait', async () => {
    const state = await build(shop.bench('builder'), job, { missing: ['pedals'] });
    const left = stepsOf(state).filter(({ id }) => standingOfStep(state, id) !== 'done');
    expect(left.map(({ id }) => id)).toEqual(expect.arrayContaining(['left-pedal', 'right-pedal']));
    expect(standingOfStep(state, 'indexing')).toBe('done');
    const pass = {
      kind: 'make-pass',
      step: 'left-pedal',
      pass: 1,
      wrench: wrenchOf('D'),
    } as const;
    const { parts } = await shop.tries('builder', job, pass, 'step-waits-for-parts');
    expect(parts).toEqual([{ part: 'pedals', state: 'missing' }]);
    const unfinished = shop.refuses(await shop.sign('builder', job, 'built'), 'steps-unfinished');
    expect(unfinished.steps).toEqual(left.map(({ id }) => id));
  });

  test('when it waits for them, then it takes up no work until they have come', async () => {
    const hold = { kind: 'hold-job', for: 'part', note: 'Pedals ordered.' } as const;
    expect(statusOf(await shop.does('builder', job, hold))).toBe('on-hold');
    const step = { kind: 'do-step', step: 'wipe-down' } as const;
    const held = await shop.tries('builder', job, step, 'job-on-hold');
    expect(held).toMatchObject({ for: 'part', note: 'Pedals ordered.' });
    await shop.does('builder', job, {
      kind: 'check-contents',
      parts: [{ part: 'pedals', state: 'present' }],
    });
    await shop.does('builder', job, { kind: 'resume-job' });
    const state = await build(shop.bench('builder'), job);
    expect(stepsOf(state).every(({ id }) => standingOfStep(state, id) === 'done')).toBe(true);
  });

  test('when a joint ends, then it ends inside its figure', async () => {
    const state = await shop.state(job);
    const tightened = Object.values(state.joints).flatMap((mark) => mark.tightened ?? []);
    expect(tightened).toHaveLength(stepsOf(state).filter(({ joint }) => joint).length);
    for (const { joint, figure, jointLow, jointHigh } of tightened) {
      if (figure.min !== undefined) expect(jointLow, joint).toBeGreaterThanOrEqual(figure.min);
      if (figure.max !== undefined) expect(jointHigh, joint).toBeLessThanOrEqual(figure.max);
    }
    expect(stepById(state, 'left-pedal')?.joint?.hand).toBe('left'); // common practice, no source
  });
});

describe('given a built bike', () => {
  test('when it has not been walked round, then it is not signed as built', async () => {
    const { points } = shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
    expect(points).toContain('front-brake-disc');
  });

  test('when a stop-ride finding is open, then it is not signed until it is put right and looked at again', async () => {
    await walk(shop.bench('builder'), job);
    const finding = { finding: 'f-1', severity: 'stop-ride', text: 'Front pads oily.' } as const;
    const point = 'front-brake-disc';
    await shop.does('builder', job, { kind: 'look-at-point', point, verdict: 'wrong', finding });
    const { findings } = shop.refuses(await shop.sign('builder', job, 'built'), 'findings-open');
    expect(findings).toEqual([finding]);
    await shop.does('builder', job, { kind: 'close-finding', finding: 'f-1', how: 'New pads.' });
    const again = shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
    expect(again.points).toEqual([point]);
    const looked = pointById(await shop.state(job), point);
    if (looked === undefined) throw new Error('the route has this point');
    await shop.does('builder', job, {
      ...lookedAt(looked),
      verdict: 'adjusted',
      note: 'New pads.',
    });
  });

  test('when the steerer clamp is loosened, then what relied on it goes stale and nothing else', async () => {
    const before = await shop.state(job);
    const loosen = { kind: 'reopen-step', step: 'steerer-clamp', reason: 'Bar turned.' } as const;
    const state = await shop.does('builder', job, loosen);
    // Common practice, no source: the clamp holds the bar straight and the bearings together.
    for (const step of ['bar-alignment', 'headset-play'])
      expect(standingOfStep(state, step), step).toBe('stale');
    for (const step of ['limit-screws', 'indexing', 'rear-disc-rub', 'front-caliper-mount'])
      expect(standingOfStep(state, step), step).toBe('done');
    for (const point of ['headset', 'stem']) expect(state.points[point]?.stale, point).toBe(true);
    const rear = Object.keys(state.points).filter((point) => /rear|gear|derailleur/.test(point));
    expect(rear.length).toBeGreaterThan(0);
    for (const point of rear) expect(state.points[point], point).toEqual(before.points[point]);

    const { steps } = shop.refuses(await shop.sign('builder', job, 'built'), 'steps-unfinished');
    expect(steps).toEqual(
      expect.arrayContaining(['steerer-clamp', 'bar-alignment', 'headset-play']),
    );
  });

  test('when all of it is shown good again, then it is signed as built, once', async () => {
    await build(shop.bench('builder'), job);
    shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
    await walk(shop.bench('builder'), job);
    expect(statusOf(must(await shop.sign('builder', job, 'built')))).toBe('to-be-checked');
    shop.refuses(await shop.sign('builder', job, 'built'), 'already-signed-as-built');
  });
});

describe('given a bike that is signed as built', () => {
  test('when its builder would check it or send it back, then both are refused', async () => {
    const { person } = shop.refuses(
      await shop.sign('builder', job, 'checked'),
      'builder-cannot-check',
    );
    expect(person).toBe(shop.people.builder.id);
    const back = { kind: 'send-back', steps: ['faceplate'], points: [], reason: 'x' } as const;
    await shop.tries('builder', job, back, 'builder-cannot-check');
    const told = topicsToTell(await shop.state(job));
    const early = await shop.handOver('builder', job, { ...handingOver, told });
    shop.refuses(early, 'not-signed-as-checked');
  });

  test('when the second checker sends points back, then they are shown good and signed again', async () => {
    const seen = unusualIn(await shop.state(job)).map(({ code }) => code);
    expect(seen).toEqual(
      expect.arrayContaining(['unusual-finding', 'unusual-reopened', 'unusual-carton']),
    );
    const state = await shop.does('checker', job, {
      kind: 'send-back',
      steps: ['faceplate'],
      points: ['front-tyre'],
      reason: 'Uneven gap at the faceplate.',
    });
    expect(statusOf(state)).toBe('on-the-stand');
    expect(standingOfStep(state, 'faceplate')).toBe('reopened');
    shop.refuses(await shop.sign('checker', job, 'checked'), 'not-signed-as-built');
    await build(shop.bench('builder'), job);
    await walk(shop.bench('builder'), job);
    must(await shop.sign('builder', job, 'built'));
  });

  test('when the checker finds something that stops the ride, then only a supervisor lets it go', async () => {
    const text = 'The bell cannot be reached from the grip.';
    const finding = { finding: 'f-2', severity: 'stop-ride', text } as const;
    await shop.does('checker', job, { kind: 'raise-finding', ...finding });
    shop.refuses(await shop.sign('checker', job, 'checked'), 'findings-open');
    const allow = {
      kind: 'allow-finding',
      finding: 'f-2',
      reason: 'Customer fits a horn.',
    } as const;
    await shop.tries('checker', job, allow, 'supervisor-only');
    await shop.does('supervisor', job, allow);
    expect(statusOf(must(await shop.sign('checker', job, 'checked')))).toBe('ready');
    shop.refuses(await shop.sign('checker', job, 'checked'), 'already-signed-as-checked');
  });
});

describe('given a bike that is ready', () => {
  test('when a finding stops the ride after all, then it stays in the shop', async () => {
    const finding = { finding: 'f-3', severity: 'stop-ride', text: 'Rear tyre flat.' } as const;
    const told = topicsToTell(await shop.state(job));
    await shop.does('supervisor', job, { kind: 'raise-finding', ...finding });
    const handed = await shop.handOver('supervisor', job, { ...handingOver, told });
    expect(shop.refuses(handed, 'findings-open').findings).toEqual([finding]);
    await shop.does('supervisor', job, { kind: 'close-finding', finding: 'f-3', how: 'New tube.' });
  });

  test('when the customer is not told of what was let go, then it is not theirs', async () => {
    const told = topicsToTell(await shop.state(job)).filter((topic) => topic !== 'findings');
    const handed = await shop.handOver('checker', job, { ...handingOver, told });
    expect(handed).toMatchObject({ ok: false, refusal: { topics: ['findings'] } });
  });

  test('when they sign, then the record is sealed and takes amendments only', async () => {
    const told = topicsToTell(await shop.state(job));
    const state = must(await shop.handOver('checker', job, { ...handingOver, told }));
    expect(statusOf(state)).toBe('handed-over');
    const reopen = { kind: 'reopen-step', step: 'faceplate', reason: 'x' } as const;
    await shop.tries('builder', job, reopen, 'record-sealed');
    await shop.tries('builder', job, { kind: 'sign-built', signing: unsigned }, 'record-sealed');
    const text = 'The customer called: all is well.';
    const amended = await shop.does('builder', job, { kind: 'amend-record', text });
    expect(amended.amendments.map((amendment) => amendment.text)).toEqual([text]);
  });
});

describe('given the sealed record', () => {
  test('then it is whole, and its signatures are good', async () => {
    const { entries } = await shop.storage.log(job);
    const row = await shop.storage.row(job);
    expect(verifyLog(entries, { job, heads: row?.heads ?? [] })).toEqual({
      ok: true,
      value: { heads: row?.heads, count: entries.length, forks: [] },
    });
    expect(must(await shop.app.checkLog(job)).count).toBe(entries.length);
    const checked = await shop.app.checkSignatures(job);
    expect(checked.map(({ meaning, finding }) => [meaning, finding])).toEqual([
      ['built', 'good'],
      ['built', 'good'],
      ['checked', 'good'],
      ['received', 'good'],
    ]);
  });

  test('then the sheet says what was done', async () => {
    const row = await shop.storage.row(job);
    const { customer } = (await shop.state(job)).handedOver ?? {};
    const named = await shop.app.customerOf(customer ?? '');
    const sheet = await shop.sheet(job, named?.name);
    expect(sheet).toMatchObject({
      shop: 'Two Bridges Cycles',
      bike: { frameNumber: bike.frameNumber },
      frontBrakeLever: 'right', // common practice in Great Britain, no source
      firstCheck: '2027-01-06',
      hasDisc: true,
      axles: ['quick-release'],
      isSealed: true,
      seal: row?.heads[0],
      entries: row?.count,
      steps: stepsOf(await shop.state(job)).length,
      amendments: [{ by: 'Owen Tarrant' }],
    });
    expect(sheet.signatures.map(({ meaning, name }) => [meaning, name])).toEqual([
      ['built', 'Owen Tarrant'],
      ['checked', 'Lena Holt'],
      ['received', 'Ottilie Fenwick'],
    ]);
    expect(sheet.findings).toEqual([
      { severity: 'stop-ride', text: 'Front pads oily.', closed: 'New pads.' },
      {
        severity: 'stop-ride',
        text: 'The bell cannot be reached from the grip.',
        allowed: { by: 'Marit Sandell', reason: 'Customer fits a horn.' },
      },
      { severity: 'stop-ride', text: 'Rear tyre flat.', closed: 'New tube.' },
    ]);
  });

  test('then each joint on the sheet carries its figure, where it comes from, and what was set', async () => {
    const sheet = await shop.sheet(job);
    const sources = new Map(sheet.joints.map((row) => [row.name, row.figure.source]));
    expect([...sources.values()]).toContainEqual({ kind: 'part', printed: '4–6 N·m' });
    expect([...sources.values()]).toContainEqual({
      kind: 'document',
      reference: 'Larkfell assembly booklet, p. 8',
    });
    expect(sheet.joints.length + sheet.otherJoints).toBe(
      stepsOf(await shop.state(job)).filter(({ joint }) => joint !== undefined).length,
    );
    for (const { name, onScale, wrench } of sheet.joints) {
      expect(onScale, name).toBeGreaterThan(0);
      expect(['A', 'B', 'C', 'D', 'F'], name).toContain(wrench); // E was dropped, G is overdue
    }
    // 30–50 psi stands on the side wall; 1 psi is 6.894757 kPa (NIST SP 811, appendix B.8).
    for (const kpa of [sheet.tyres.front, sheet.tyres.rear]) {
      expect(kpa).toBeGreaterThanOrEqual(30 * 6.894757);
      expect(kpa).toBeLessThanOrEqual(50 * 6.894757);
    }
  });

  test('then every gate has refused once', () => {
    expect([...shop.refused].sort()).toEqual([...gateCodes].sort());
  });
});

function wrenchOf(id: string) {
  const wrench = shop.bench('builder').wrenches.find((candidate) => candidate.id === id);
  if (wrench === undefined) throw new Error(`the board has no wrench ${id}`);
  return wrench;
}
