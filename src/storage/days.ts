/** How days are searched for when there is no last one. */

/** Later than every ISO date. */
export const lastOfDays = '9999-12-31';
