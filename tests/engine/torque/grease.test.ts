/** Dry against greased, at the same torque. */

import { describe, expect, test } from 'vitest';
import { greaseEffect, preloadFrom, socketHeadBearing } from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';

const m5 = { diameter: millimetres(5), pitch: millimetres(0.8) };

const faceplateBolt = {
  thread: m5,
  torque: newtonMetres(5),
  propertyClass: '8.8',
  clamps: ['aluminium', 'aluminium'],
};

function effectOf(change: Partial<Parameters<typeof greaseEffect>[0]> = {}) {
  const effect = greaseEffect({ ...faceplateBolt, ...change });
  if (!effect.ok) throw new Error(effect.refusal.code);
  return effect.value;
}

describe('greaseEffect', () => {
  // ISO 898-1: an M5 of class 8.8 proves at 8230 N
  test('[T23] grease raises the preload, and the shares are of the proof load', () => {
    const { dry, greased, gain, proofLoad } = effectOf();
    expect(proofLoad).toBeCloseTo(8230, -2);
    expect(gain).toBeGreaterThan(1.3);
    expect(gain).toBeLessThan(1.8);
    expect(greased.low).toBeGreaterThan(dry.low);
    expect(greased.high).toBeGreaterThan(dry.high);
    for (const range of [dry, greased]) {
      expect(range.low).toBeLessThan(range.high);
      expect(range.lowShare).toBeCloseTo(range.low / proofLoad, 12);
      expect(range.highShare).toBeCloseTo(range.high / proofLoad, 12);
    }
  });

  // VDI 2230 table A5, from memory: dry steel 0.14–0.24, greased 0.08–0.16; stainless dry 0.20–0.35, greased 0.14–0.24
  test.each<
    [
      propertyClass: string,
      dryLow: number,
      dryHigh: number,
      greasedLow: number,
      greasedHigh: number,
    ]
  >([
    ['8.8', 0.24, 0.14, 0.16, 0.08],
    ['A2-70', 0.35, 0.2, 0.24, 0.14],
  ])('[T23] class %s takes the friction of its material', (propertyClass, ...frictions) => {
    const { dry, greased } = effectOf({ propertyClass });
    const bearing = socketHeadBearing(5);
    if (bearing === undefined) throw new Error('no socket head for M5');
    const computed = frictions.map((friction) => {
      const joint = {
        thread: m5,
        torque: newtonMetres(5),
        frictionThread: friction,
        frictionHead: friction,
        ...bearing,
      };
      const preload = preloadFrom(joint);
      return preload.ok ? preload.value : 0;
    });
    expect([dry.low, dry.high, greased.low, greased.high]).toEqual(computed);
  });

  test('[T23] a given bearing surface is taken', () => {
    const wide = { headDiameter: millimetres(12), holeDiameter: millimetres(5.5) };
    expect(effectOf({ bearing: wide }).dry.high).toBeLessThan(effectOf().dry.high);
  });

  test.each<[situation: string, change: object, refusal: object]>([
    [
      'carbon',
      { clamps: ['aluminium', 'carbon'] },
      { code: 'material-not-computed', material: 'carbon' },
    ],
    ['plastic', { clamps: ['plastic'] }, { code: 'material-not-computed', material: 'plastic' }],
    ['nothing known', { clamps: [] }, { code: 'material-not-computed', material: 'unknown' }],
    [
      'an unmarked bolt',
      { propertyClass: '' },
      { code: 'property-class-unknown', propertyClass: '' },
    ],
    [
      'a thread out of the table',
      { thread: { ...m5, pitch: millimetres(1) } },
      { code: 'thread-not-in-table', diameter: 5, pitch: 1 },
    ],
    [
      'a thread without an ordinary socket head',
      { thread: { diameter: millimetres(15), pitch: millimetres(1) } },
      { code: 'bearing-impossible' },
    ],
    [
      'a head that falls through',
      { bearing: { headDiameter: millimetres(5), holeDiameter: millimetres(5.5) } },
      { code: 'bearing-impossible' },
    ],
  ])('[T22] %s is refused', (_, change, refusal) => {
    expect(greaseEffect({ ...faceplateBolt, ...change })).toEqual({ ok: false, refusal });
  });
});
