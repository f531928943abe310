/** The definitions every conversion is built from: exact by agreement, never retail tables (NIST SP 811). */

export const POUND_IN_KILOGRAMS = 0.45359237;
export const INCH_IN_METRES = 0.0254;
export const FOOT_IN_INCHES = 12;

/** Metres per second squared. */
export const STANDARD_GRAVITY = 9.80665;

export const POUND_FORCE_IN_NEWTONS = POUND_IN_KILOGRAMS * STANDARD_GRAVITY;
