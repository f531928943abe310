/** A torque wrench on the tool board, with its scale in its own unit and the state of its calibration. */

import * as z from 'zod/mini';
import { torqueUnits } from '../units';
import { nameSchema } from './quantity.schema';
import { wrenchClasses, wrenchClassTable, wrenchTypes } from './wrench-classes';

export const wrenchKinds = [
  'click',
  'preset',
  'beam',
  'dial',
  'electronic',
  'screwdriver',
] as const;

export const wrenchConditions = ['in service', 'dropped', 'overloaded', 'away', 'retired'] as const;

const positive = z.number().check(z.positive());

/** At most a half: a tool further out than that is no torque tool. */
const fractionSchema = z.number().check(z.gte(-0.5), z.lte(0.5));

export const certificatePointSchema = z.object({
  /** The torque tested, in the wrench's own unit. */
  at: positive,
  /** Signed: (indicated − true) / true. */
  deviation: fractionSchema,
  /** Relative expanded uncertainty of the measurement (k = 2). */
  uncertainty: z.exactOptional(z.number().check(z.nonnegative(), z.lte(0.5))),
});

/** What a calibration laboratory found: one deviation for the whole scale, or one for each test point. */
export const certificateSchema = z
  .object({
    reference: z.exactOptional(nameSchema),
    deviation: z.exactOptional(z.number().check(z.nonnegative(), z.lte(0.5))),
    points: z.exactOptional(z.array(certificatePointSchema).check(z.minLength(1))),
  })
  .check(z.refine(({ deviation, points }) => deviation !== undefined || points !== undefined));

export const wrenchSchema = z
  .object({
    id: nameSchema,
    name: nameSchema,
    kind: z.exactOptional(z.enum(wrenchKinds)),
    type: z.enum(wrenchTypes),
    class: z.enum(wrenchClasses),
    /** Lowest and highest marked value and the step between settings, in `unit`; a preset tool has one value. */
    lowest: positive,
    highest: positive,
    increment: positive,
    unit: z.enum(torqueUnits),
    certificate: z.exactOptional(certificateSchema),
    calibratedOn: z.iso.date(),
    dueOn: z.iso.date(),
    condition: z.enum(wrenchConditions),
    /** Operations since the last calibration. */
    operations: z.exactOptional(z.number().check(z.int(), z.nonnegative())),
  })
  .check(
    z.refine(({ lowest, highest }) => lowest <= highest),
    z.refine((wrench) => wrenchClassTable[wrench.type][wrench.class] !== undefined),
  );

export type CertificatePoint = z.infer<typeof certificatePointSchema>;
export type Certificate = z.infer<typeof certificateSchema>;
export type WrenchKind = (typeof wrenchKinds)[number];
export type WrenchCondition = (typeof wrenchConditions)[number];
export type Wrench = z.infer<typeof wrenchSchema>;
