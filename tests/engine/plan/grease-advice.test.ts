/** Advice about grease: what is known goes in, what is not known refuses. */

import { describe, expect, test } from 'vitest';
import { type GreaseAdviceRefusal, greaseAdvice, resolvePlan } from '../../../src/engine/plan';
import { figureSchema, preloadFrom, socketHeadBearing } from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { seedCatalogue } from '../../support/seed-catalogue';

type Asked = Parameters<typeof greaseAdvice>[0];

const figure = figureSchema.parse({
  min: 4,
  max: 6,
  source: { kind: 'part', printed: '4–6 N·m' },
});
const joint: Asked['joint'] = { clamps: ['aluminium'], preparation: 'grease', thread: 'M5' };

function adviceOn(change: Partial<Asked['joint']> = {}, own: Partial<Asked> = {}) {
  return greaseAdvice({ joint: { ...joint, ...change }, figure, propertyClass: '8.8', ...own });
}

describe('greaseAdvice', () => {
  test('[P32] compares dry and greased at the middle of the figure', () => {
    const advice = adviceOn();
    if (!advice.ok) throw new Error(advice.refusal.code);
    expect(advice.value.torque).toBe(5);
    // VDI 2230 long form at 5 N·m, friction in the middle of its classes (from memory): dry 0.19, greased 0.12.
    const bearing = socketHeadBearing(5);
    if (bearing === undefined) throw new Error('no socket head for M5');
    const at = (friction: number) => {
      const preload = preloadFrom({
        thread: { diameter: millimetres(5), pitch: millimetres(0.8) },
        torque: newtonMetres(5),
        frictionThread: friction,
        frictionHead: friction,
        ...bearing,
      });
      return preload.ok ? preload.value : Number.NaN;
    };
    expect(advice.value.gain).toBeCloseTo(at(0.12) / at(0.19), 9);
    // ISO 898-1: the proof load of an M5 of class 8.8 is 8230 N.
    expect(advice.value.proofLoad / 8230).toBeCloseTo(1, 2);
  });

  test.each<[figure: object, torque: number]>([
    [{ max: 5 }, 5],
    [{ min: 5 }, 5],
    [{ min: 4, max: 6, target: 5.5 }, 5.5],
    [{ target: 8 }, 8],
  ])('[P32] a figure of %j is taken at %d N·m', (limits, torque) => {
    const own = figureSchema.parse({ ...limits, source: figure.source });
    const advice = adviceOn({}, { figure: own });
    expect(advice.ok && advice.value.torque).toBe(torque);
  });

  test.each<
    [situation: string, change: Partial<Asked['joint']>, stamp: string | undefined, code: string]
  >([
    ['a carbon bar', { clamps: ['carbon'] }, '8.8', 'material-not-computed'],
    [
      'a carbon post in a metal frame',
      { clamps: ['aluminium', 'carbon'] },
      '8.8',
      'material-not-computed',
    ],
    ['a material nobody knows', { clamps: ['unknown'] }, '8.8', 'material-not-computed'],
    ['threadlocker', { preparation: 'threadlocker' }, '8.8', 'preparation-not-computed'],
    ['compound', { preparation: 'assembly-compound' }, '8.8', 'preparation-not-computed'],
    ['two threads', { thread: 'M5 or M6' }, '8.8', 'thread-not-one'],
    ['an inch thread', { thread: '9/16 in × 20' }, '8.8', 'thread-not-one'],
    ['a pitch no table has', { thread: 'M5×0.6' }, '8.8', 'thread-not-in-table'],
    ['a bolt without a stamp', {}, undefined, 'bolt-stamp-missing'],
    ['a stamp no table has', {}, '7.7', 'property-class-unknown'],
  ])('[P32] %s is not computed', (_, change, propertyClass, code) => {
    const advice = adviceOn(change, { propertyClass });
    expect(advice.ok ? 'computed' : advice.refusal.code).toBe(code);
  });

  test('[P32] a joint of which the description says nothing is not computed', () => {
    const { clamps: _, ...bare } = joint;
    const advice = greaseAdvice({ joint: bare, figure, propertyClass: '8.8' });
    expect(advice).toEqual({
      ok: false,
      refusal: { code: 'material-not-computed', material: 'unknown' } satisfies GreaseAdviceRefusal,
    });
  });

  test('[P32] on a real bike: computed at an alloy bar, refused at a carbon one', () => {
    const codes = (['aluminium', 'carbon'] as const).map((barMaterial) => {
      const bike = bikeFrom(mountainBike, {
        steering: { barMaterial },
        front: { tyrePressure: '30-50 psi', rotor: 'six-bolt', discMount: 'post' },
        rear: { tyrePressure: '30-50 psi', rotor: 'six-bolt', discMount: 'post' },
      });
      const plan = resolvePlan(bike, seedCatalogue());
      if (!plan.ok) throw new Error(plan.refusal.code);
      const faceplate = plan.value.steps.find((step) => step.joint?.id === 'faceplate')?.joint;
      if (faceplate === undefined) throw new Error('a faceplate was expected');
      const advice = greaseAdvice({ joint: faceplate, figure, propertyClass: '8.8' });
      return advice.ok ? 'computed' : advice.refusal.code;
    });
    expect(codes).toEqual(['computed', 'material-not-computed']);
  });
});
