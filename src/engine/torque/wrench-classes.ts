/** Types and classes of hand torque tools, and the deviation each may have (ISO 6789-1:2017). */

export const wrenchTypes = ['I', 'II'] as const;
export const wrenchClasses = ['A', 'B', 'C', 'D', 'E', 'F', 'G'] as const;

export type WrenchType = (typeof wrenchTypes)[number];
export type WrenchClass = (typeof wrenchClasses)[number];

type ClassRow = {
  /** Largest permissible deviation, as a fraction, where the tool's maximum is 10 N·m or less. */
  readonly upTo10: number;
  /** The same where the maximum is above 10 N·m. */
  readonly above10: number;
  /** Turned about its own axis: there is no lever whose length an adapter could change. */
  readonly screwdriver: boolean;
};

const finer: ClassRow = { upTo10: 0.06, above10: 0.04, screwdriver: false };
const coarser: ClassRow = { upTo10: 0.06, above10: 0.06, screwdriver: false };

/**
 * Type I indicates a torque (A bar, B and C dial or display, D and E screwdriver); type II is set to one (A to C wrench,
 * D to F screwdriver, G bar). Source: ISO 6789-1:2017, type II class A seen, all other rows from memory.
 */
export const wrenchClassTable: Readonly<
  Record<WrenchType, Readonly<Partial<Record<WrenchClass, ClassRow>>>>
> = {
  I: {
    A: coarser,
    B: finer,
    C: finer,
    D: { ...coarser, screwdriver: true },
    E: { ...finer, screwdriver: true },
  },
  II: {
    A: finer,
    B: finer,
    C: finer,
    D: { ...coarser, screwdriver: true },
    E: { ...coarser, screwdriver: true },
    F: { ...coarser, screwdriver: true },
    G: coarser,
  },
};

/** ISO 6789-1: the deviation allowed depends on the maximum of the tool, not on the torque set. */
export const SMALL_TOOL_MAXIMUM_NEWTON_METRES = 10;

/** ISO 6789-1: recalibrate after this many operations, or after 12 months, whichever comes first. */
export const OPERATIONS_BETWEEN_CALIBRATIONS = 5000;
