/** Set points by a certificate that says for each test point how far the wrench is out and to which side. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Adapter,
  type CertificatePoint,
  planSetPoint,
  type Wrench,
} from '../../../src/engine/torque';
import {
  millimetres,
  newtonMetres,
  newtonMetresFrom,
  newtonMetresTo,
  torqueUnits,
} from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

/** Plain interpolation on the wrench's own scale: what the certificate says at one setting. */
function statedAt(points: readonly CertificatePoint[], onScale: number) {
  const sorted = [...points].sort((a, b) => a.at - b.at);
  const above = sorted.findIndex(({ at }) => at >= onScale);
  const right = sorted[above === -1 ? sorted.length - 1 : above] as CertificatePoint;
  const left = sorted[above <= 0 ? sorted.indexOf(right) : above - 1] as CertificatePoint;
  const share = left.at === right.at ? 0 : (onScale - left.at) / (right.at - left.at);
  const mix = (a: number, b: number) => a + (b - a) * share;
  const found = mix(left.deviation, right.deviation);
  const around = mix(left.uncertainty ?? 0, right.uncertainty ?? 0);
  return { low: found - around, high: found + around };
}

const points: fc.Arbitrary<CertificatePoint[]> = fc
  .array(
    fc.record({
      at: fc.integer({ min: 2, max: 25 }),
      deviation: fc.double({ min: -0.08, max: 0.08, noNaN: true }),
      uncertainty: fc.double({ min: 0, max: 0.03, noNaN: true }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((all) => all.filter(({ at }, index) => all.findIndex((one) => one.at === at) === index));

const tools: fc.Arbitrary<Wrench> = fc
  .record({
    points,
    increment: fc.constantFrom(0.1, 0.25, 0.5, 1),
    unit: fc.constantFrom(...torqueUnits),
  })
  .map(({ points: found, increment, unit }) =>
    wrench({ increment, unit, certificate: { points: found } }),
  );

const adapters: fc.Arbitrary<Adapter | undefined> = fc.option(
  fc.record({
    grip: fc.integer({ min: 80, max: 400 }).map(millimetres),
    offset: fc.integer({ min: 0, max: 60 }).map(millimetres),
    angle: fc.integer({ min: 0, max: 180 }),
  }),
  { nil: undefined },
);
const shares = fc.double({ min: -0.05, max: 1.05, noNaN: true });
const widths = fc.double({ min: 0.01, max: 0.3, noNaN: true });

function rangeOn({ unit }: Wrench, share: number, width: number, factor = 1) {
  const middle = newtonMetresFrom(2 + 23 * share, unit) * factor;
  return { min: newtonMetres(middle * (1 - width)), max: newtonMetres(middle * (1 + width)) };
}

function leverOf(adapter: Adapter | undefined): number {
  if (adapter === undefined) return 1;
  const { grip, offset, angle } = adapter;
  return (grip + offset * Math.cos((angle * Math.PI) / 180)) / grip;
}

function settingsOf({ lowest, highest, increment }: Wrench): readonly number[] {
  const count = Math.round((highest - lowest) / increment) + 1;
  return Array.from({ length: count }, (_, step) => lowest + step * increment);
}

const foundOf = ({ certificate }: Wrench) => certificate?.points ?? [];
const DUST = 1e-9;

describe('planSetPoint by a certificate', () => {
  // by hand from set/(1 + a); 3 % out at 5 and −3 % at 15 is 2.7 % at 5.5
  test.each<
    [
      situation: string,
      CertificatePoint[],
      figure: object,
      onScale: number,
      low: number,
      high: number,
    ]
  >([
    [
      'reads high: more is set',
      [{ at: 10, deviation: 0.06 }],
      { min: 9, max: 11 },
      10.5,
      9.9057,
      9.9057,
    ],
    [
      'reads low: less is set',
      [{ at: 10, deviation: -0.06 }],
      { min: 9, max: 11 },
      9.5,
      10.1064,
      10.1064,
    ],
    [
      'its uncertainty counts to both sides',
      [{ at: 10, deviation: 0.02, uncertainty: 0.01 }],
      { min: 9, max: 11 },
      10,
      10 / 1.03,
      10 / 1.01,
    ],
    [
      'straight between two points',
      [
        { at: 5, deviation: 0.03 },
        { at: 15, deviation: -0.03 },
      ],
      { min: 5, max: 5.7 },
      5.5,
      5.3554,
      5.3554,
    ],
    ['a single value, corrected', [{ at: 10, deviation: 0.05 }], { target: 10 }, 10.5, 10, 10],
    [
      'a maximum, as near as it surely allows',
      [{ at: 10, deviation: -0.04, uncertainty: 0.01 }],
      { max: 10 },
      9.5,
      9.7938,
      10,
    ],
  ])('[T4, T9, T10] %s', (_, found, figure, onScale, low, high) => {
    const tool = wrench({ certificate: { points: found } });
    const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
    if (!planned.ok) throw new Error(JSON.stringify(planned.refusal));
    expect(planned.value.onScale).toBe(onScale);
    expect(planned.value.jointLow).toBeCloseTo(low, 4);
    expect(planned.value.jointHigh).toBeCloseTo(high, 4);
  });

  test('[T9] a covered joint is inside for every deviation the certificate allows, the adapter included', () => {
    fc.assert(
      fc.property(tools, adapters, shares, widths, (tool, adapter, share, width) => {
        const factor = leverOf(adapter);
        const { min, max } = rangeOn(tool, share, width, factor);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, adapter, on: TODAY });
        if (!planned.ok) return;
        const { setPoint, onScale, jointLow, jointHigh } = planned.value;
        const { low, high } = statedAt(foundOf(tool), onScale);
        for (let step = 0; step <= 40; step += 1) {
          const joint = (setPoint * factor) / (1 + low + ((high - low) * step) / 40);
          expect(joint).toBeGreaterThanOrEqual(Math.max(min, jointLow) * (1 - DUST));
          expect(joint).toBeLessThanOrEqual(Math.min(max, jointHigh) * (1 + DUST));
        }
      }),
      { numRuns: 400 },
    );
  });

  test('[T10, T14] no setting of the scale is better, and a refusal means that none keeps the joint inside', () => {
    fc.assert(
      fc.property(tools, adapters, shares, widths, (tool, adapter, share, width) => {
        const factor = leverOf(adapter);
        const { min, max } = rangeOn(tool, share, width, factor);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, adapter, on: TODAY });
        const outcomes = settingsOf(tool).map((onScale) => {
          const { low, high } = statedAt(foundOf(tool), onScale);
          const nominal = newtonMetresFrom(onScale, tool.unit) * factor;
          return {
            low: nominal / (1 + high),
            high: nominal / (1 + low),
            likely: nominal / (1 + (low + high) / 2),
            bias: { low, high },
            nominal,
          };
        });
        const strictly = outcomes.filter(
          ({ low, high }) => low >= min * (1 + DUST) && high <= max * (1 - DUST),
        );
        if (!planned.ok) {
          expect(strictly).toEqual([]);
          if (planned.refusal.code !== 'wrench-too-coarse') return;
          const risks = outcomes.map(({ nominal, bias }) => missed(nominal, bias, min, max));
          expect(planned.refusal.leastRisky.riskOutside).toBeCloseTo(Math.min(...risks), 6);
          return;
        }
        const target = (min + max) / 2;
        const { low, high } = statedAt(foundOf(tool), planned.value.onScale);
        const likely = (planned.value.setPoint * factor) / (1 + (low + high) / 2);
        for (const other of strictly) {
          expect(Math.abs(likely - target)).toBeLessThanOrEqual(
            Math.abs(other.likely - target) + DUST * target * 10,
          );
        }
      }),
      { numRuns: 400 },
    );
  });

  /** The share of evenly spread deviations that miss the range; all or nothing where the band has no width. */
  function missed(
    nominal: number,
    { low, high }: { low: number; high: number },
    min: number,
    max: number,
  ): number {
    const from = Math.max(low, nominal / max - 1);
    const to = Math.min(high, nominal / min - 1);
    if (high - low < 1e-9) return to >= from - 1e-9 ? 0 : 1;
    return 1 - Math.max(0, to - from) / (high - low);
  }

  test('[T15] a higher figure never gets a lower set point, where the certificate lets a higher setting deliver more', () => {
    const more = fc.double({ min: 1, max: 2, noNaN: true });
    fc.assert(
      fc.property(tools, shares, widths, more, (tool, share, width, times) => {
        const ends = settingsOf(tool).map((onScale) => {
          const { low, high } = statedAt(foundOf(tool), onScale);
          return [onScale / (1 + high), onScale / (1 + low)] as const;
        });
        fc.pre(
          ends.every(
            ([low, high], at) =>
              low >= (ends[at - 1]?.[0] ?? 0) && high >= (ends[at - 1]?.[1] ?? 0),
          ),
        );
        const { min, max } = rangeOn(tool, share, width);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, on: TODAY });
        const higher = { min: newtonMetres(min * times), max: newtonMetres(max * times) };
        const raised = planSetPoint({ figure: higher, wrench: tool, on: TODAY });
        if (planned.ok && raised.ok) {
          expect(raised.value.onScale).toBeGreaterThanOrEqual(planned.value.onScale);
        }
      }),
    );
  });

  test('[T15] a certificate written in another unit says the same', () => {
    fc.assert(
      fc.property(
        tools,
        fc.constantFrom(...torqueUnits),
        shares,
        widths,
        (tool, unit, share, width) => {
          const into = (value: number) => newtonMetresTo(newtonMetresFrom(value, tool.unit), unit);
          const rewritten: Wrench = {
            ...tool,
            unit,
            lowest: into(tool.lowest),
            highest: into(tool.highest),
            increment: into(tool.increment),
            certificate: {
              points: foundOf(tool).map((point) => ({ ...point, at: into(point.at) })),
            },
          };
          const figure = rangeOn(tool, share, width);
          const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
          const again = planSetPoint({ figure, wrench: rewritten, on: TODAY });
          expect(again.ok).toBe(planned.ok);
          if (planned.ok && again.ok)
            expect(again.value.setPoint / planned.value.setPoint).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test('[T11, T14] even a certificate out of all measure is answered', () => {
    const wild = wrench({
      certificate: { points: [{ at: 5, deviation: -0.5, uncertainty: 0.5 }] },
    });
    for (const figure of [
      { min: newtonMetres(5) },
      { max: newtonMetres(5) },
      { target: newtonMetres(5) },
    ]) {
      const planned = planSetPoint({ figure, wrench: wild, on: TODAY });
      if (planned.ok) expect(planned.value.jointHigh).toBeGreaterThan(planned.value.jointLow);
      else expect(planned.refusal.code).toMatch(/wrench-too-coarse|figure-outside-wrench-range/);
    }
  });
});
