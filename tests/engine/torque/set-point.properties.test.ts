/** Set points for any figure, wrench and adapter, against plain counting over every setting of the scale. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Adapter,
  adapterFactor,
  permissibleDeviation,
  planSetPoint,
  type SetPoint,
  type SetPointRefusal,
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

const wrenches: fc.Arbitrary<Wrench> = fc
  .record({
    first: fc.integer({ min: 1, max: 40 }),
    steps: fc.integer({ min: 0, max: 120 }),
    increment: fc.constantFrom(0.1, 0.2, 0.25, 0.5, 1, 5),
    unit: fc.constantFrom(...torqueUnits),
    letter: fc.constantFrom('A', 'G' as const),
    certified: fc.option(fc.double({ min: 0.002, max: 0.12, noNaN: true })),
  })
  .map(({ first, steps, increment, unit, letter, certified }) =>
    wrench({
      lowest: Number((first * increment).toFixed(6)),
      highest: Number(((first + steps) * increment).toFixed(6)),
      increment,
      unit,
      class: letter as 'A' | 'G',
      ...(certified === null ? {} : { certificate: { deviation: certified } }),
    }),
  );

const adapters: fc.Arbitrary<Adapter | undefined> = fc.option(
  fc.record({
    grip: fc.integer({ min: 80, max: 400 }).map(millimetres),
    offset: fc.integer({ min: 0, max: 60 }).map(millimetres),
    angle: fc.integer({ min: 0, max: 180 }),
  }),
  { nil: undefined },
);

/** A place on the wrench's own scale, so that most figures are within its reach. */
const shares = fc.double({ min: -0.1, max: 1.1, noNaN: true });
const widths = fc.double({ min: 0.01, max: 0.5, noNaN: true });

function rangeOn({ lowest, highest, unit }: Wrench, share: number, width: number) {
  const middle = newtonMetresFrom(Math.max(0.05, lowest + (highest - lowest) * share), unit);
  return { min: newtonMetres(middle * (1 - width)), max: newtonMetres(middle * (1 + width)) };
}

function settingsOf({ lowest, highest, increment, unit }: Wrench): readonly number[] {
  const count = Math.round((highest - lowest) / increment) + 1;
  return Array.from({ length: count }, (_, step) =>
    newtonMetresFrom(lowest + step * increment, unit),
  );
}

const DUST = 1e-9;

describe('planSetPoint', () => {
  test('[T9] whatever the true deviation, a covered joint ends inside, the adapter included', () => {
    fc.assert(
      fc.property(wrenches, adapters, shares, widths, (tool, adapter, share, width) => {
        const { min, max } = rangeOn(tool, share, width);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, adapter, on: TODAY });
        if (!planned.ok) return;
        const deviation = permissibleDeviation(tool);
        const factor = adapter === undefined ? 1 : leverOf(adapter);
        for (let step = -20; step <= 20; step += 1) {
          const joint = (planned.value.setPoint * factor) / (1 + (deviation * step) / 20);
          expect(joint).toBeGreaterThanOrEqual(min * (1 - DUST));
          expect(joint).toBeLessThanOrEqual(max * (1 + DUST));
          expect(joint).toBeGreaterThanOrEqual(planned.value.jointLow * (1 - DUST));
          expect(joint).toBeLessThanOrEqual(planned.value.jointHigh * (1 + DUST));
        }
        expect(planned.value.covered).toBe(true);
        expect(planned.value.riskOutside).toBe(0);
      }),
      { numRuns: 400 },
    );
  });

  function leverOf({ grip, offset, angle }: Adapter): number {
    return (grip + offset * Math.cos((angle * Math.PI) / 180)) / grip;
  }

  test('[T10, T14] no setting of the scale is better, and a refusal means that none is covered', () => {
    fc.assert(
      fc.property(wrenches, adapters, shares, widths, (tool, adapter, share, width) => {
        const { min, max } = rangeOn(tool, share, width);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, adapter, on: TODAY });
        const deviation = permissibleDeviation(tool);
        const factor = adapter === undefined ? 1 : leverOf(adapter);
        const target = (min + max) / 2;
        const strictly = settingsOf(tool).filter(
          (set) =>
            (set * factor) / (1 + deviation) >= min * (1 + DUST) &&
            (set * factor) / (1 - deviation) <= max * (1 - DUST),
        );
        if (!planned.ok) {
          expect(strictly).toEqual([]);
          return;
        }
        const distance = (set: number) => Math.abs(set * factor - target);
        for (const set of strictly) {
          expect(distance(planned.value.setPoint)).toBeLessThanOrEqual(
            distance(set) + DUST * target * 10,
          );
        }
      }),
      { numRuns: 400 },
    );
  });

  test('[T14] the setting in a refusal is the least risky of the whole scale', () => {
    const narrow = fc.double({ min: 0.001, max: 0.06, noNaN: true });
    fc.assert(
      fc.property(wrenches, shares, narrow, (tool, share, width) => {
        const { min, max } = rangeOn(tool, share, width);
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, on: TODAY });
        if (planned.ok || planned.refusal.code !== 'wrench-too-coarse') return;
        const deviation = permissibleDeviation(tool);
        const least = Math.min(...settingsOf(tool).map((set) => missed(set, deviation, min, max)));
        const { leastRisky } = planned.refusal;
        expect(leastRisky.riskOutside).toBeCloseTo(least, 6);
        expect(leastRisky.covered).toBe(false);
      }),
      { numRuns: 400 },
    );
  });

  /** The share of evenly spread deviations that miss the range. */
  function missed(set: number, deviation: number, min: number, max: number): number {
    const from = Math.max(-deviation, set / max - 1);
    const to = Math.min(deviation, set / min - 1);
    return 1 - Math.max(0, to - from) / (2 * deviation);
  }

  test('[T8] every set point lies on the scale', () => {
    fc.assert(
      fc.property(wrenches, adapters, shares, widths, (tool, adapter, share, width) => {
        const figure = rangeOn(tool, share, width);
        const planned = planSetPoint({ figure, wrench: tool, adapter, on: TODAY });
        const chosen = planned.ok ? planned.value : leastRiskyOf(planned.refusal);
        if (chosen === undefined) return;
        const { onScale, setPoint } = chosen;
        const steps = (onScale - tool.lowest) / tool.increment;
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
        expect(onScale).toBeGreaterThanOrEqual(tool.lowest);
        expect(onScale).toBeLessThanOrEqual(tool.highest + 1e-9);
        expect(setPoint).toBeCloseTo(newtonMetresFrom(onScale, tool.unit), 9);
      }),
    );
  });

  function leastRiskyOf(refusal: SetPointRefusal): SetPoint | undefined {
    return refusal.code === 'wrench-too-coarse' ? refusal.leastRisky : undefined;
  }

  test('[T11] a maximum is never passed, and the next setting up would pass it', () => {
    fc.assert(
      fc.property(wrenches, adapters, shares, (tool, adapter, share) => {
        const { max } = rangeOn(tool, share, 0.1);
        const planned = planSetPoint({ figure: { max }, wrench: tool, adapter, on: TODAY });
        if (!planned.ok) return;
        const { jointHigh, onScale } = planned.value;
        expect(jointHigh).toBeLessThanOrEqual(max);
        const next = onScale + tool.increment;
        if (next > tool.highest + 1e-9) return;
        expect((jointHigh * next) / onScale).toBeGreaterThan(max * (1 - DUST));
      }),
    );
  });

  test('[T11] a minimum is always reached, and the next setting down would miss it', () => {
    fc.assert(
      fc.property(wrenches, adapters, shares, (tool, adapter, share) => {
        const { min } = rangeOn(tool, share, 0.1);
        const planned = planSetPoint({ figure: { min }, wrench: tool, adapter, on: TODAY });
        if (!planned.ok) return;
        const { jointLow, onScale } = planned.value;
        expect(jointLow).toBeGreaterThanOrEqual(min);
        const next = onScale - tool.increment;
        if (next < tool.lowest - 1e-9) return;
        expect((jointLow * next) / onScale).toBeLessThan(min * (1 + DUST));
      }),
    );
  });

  test('[T12] a single value is set as near as the scale allows, and may be what is delivered', () => {
    fc.assert(
      fc.property(wrenches, shares, (tool, share) => {
        const target = newtonMetres(rangeOn(tool, share, 0.1).max);
        const planned = planSetPoint({ figure: { target }, wrench: tool, on: TODAY });
        if (!planned.ok) return;
        const { onScale, jointLow, jointHigh } = planned.value;
        const away = Math.abs(onScale - newtonMetresTo(target, tool.unit));
        expect(away).toBeLessThanOrEqual(tool.increment / 2 + 1e-9);
        expect(jointLow).toBeLessThanOrEqual(target * (1 + DUST));
        expect(jointHigh).toBeGreaterThanOrEqual(target * (1 - DUST));
      }),
    );
  });

  test('[T15] a higher figure never gets a lower set point', () => {
    const more = fc.double({ min: 1, max: 2, noNaN: true });
    fc.assert(
      fc.property(wrenches, shares, widths, more, (tool, share, width, times) => {
        const { min, max } = rangeOn(tool, share, width);
        const higher = { min: newtonMetres(min * times), max: newtonMetres(max * times) };
        const planned = planSetPoint({ figure: { min, max }, wrench: tool, on: TODAY });
        const raised = planSetPoint({ figure: higher, wrench: tool, on: TODAY });
        if (planned.ok && raised.ok) {
          expect(raised.value.onScale).toBeGreaterThanOrEqual(planned.value.onScale);
        }
      }),
    );
  });

  test('[T15] the same scale written in another unit is set to the same torque', () => {
    fc.assert(
      fc.property(
        wrenches,
        fc.constantFrom(...torqueUnits),
        shares,
        widths,
        (tool, unit, share, width) => {
          const into = (value: number) => newtonMetresTo(newtonMetresFrom(value, tool.unit), unit);
          const { lowest, highest, increment } = tool;
          const rewritten: Wrench = {
            ...tool,
            unit,
            lowest: into(lowest),
            highest: into(highest),
            increment: into(increment),
          };
          const figure = rangeOn(tool, share, width);
          const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
          const again = planSetPoint({ figure, wrench: rewritten, on: TODAY });
          expect(again.ok).toBe(planned.ok);
          if (planned.ok && again.ok) {
            expect(again.value.setPoint / planned.value.setPoint).toBeCloseTo(1, 6);
          }
        },
      ),
    );
  });

  test('[T7] an adapter at a right angle, or with no offset, changes no plan', () => {
    fc.assert(
      fc.property(wrenches, shares, widths, fc.boolean(), (tool, share, width, straight) => {
        const figure = rangeOn(tool, share, width);
        const adapter = straight
          ? { grip: millimetres(200), offset: millimetres(0), angle: 30 }
          : { grip: millimetres(200), offset: millimetres(30), angle: 90 };
        expect(adapterFactor(adapter, tool)).toMatchObject({ ok: true });
        const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
        const withAdapter = planSetPoint({ figure, wrench: tool, adapter, on: TODAY });
        expect(withAdapter.ok).toBe(planned.ok);
        if (planned.ok && withAdapter.ok) {
          expect(withAdapter.value.onScale).toBe(planned.value.onScale);
        }
      }),
    );
  });
});
