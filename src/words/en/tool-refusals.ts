/** What the tool board refuses, in English, and what to do about it. */

import { dateText } from './time';

type Facts = Readonly<Record<string, unknown>>;

const text = (value: unknown) => String(value ?? '');
const named = (wrench: unknown) => (wrench === undefined ? 'This wrench' : `Wrench ${wrench}`);
const day = (value: unknown) => (typeof value === 'string' ? dateText(value) : 'that day');

export const toolRefusals: Readonly<Record<string, (facts: Facts) => string>> = {
  'tool-missing': () => 'This tool is not on the board any more. Go back to the board.',
  'tool-name-taken': ({ name }) =>
    `${name === undefined ? 'This name' : `“${text(name)}”`} stands on the board already, perhaps retired. Records know a tool by its name, so give this one another.`,
  'day-not-yet': () => 'This day has not come yet. Look at the date.',
  'wrench-needs-calibration': ({ wrench }) =>
    `${named(wrench)} goes back into service only with a good calibration. Have it calibrated, and enter that.`,
  'calibration-days-wrong': ({ since }) =>
    `A calibration comes after the one before it (${day(since)}), and the next one is due after it. Look at the dates.`,
  'wrench-found-outside': ({ wrench }) =>
    `${named(wrench)} was found outside its tolerance. Say what was done and enter the points it left with, or take it out of service.`,
  'wrench-left-outside': ({ wrench }) =>
    `${named(wrench)} is still outside its tolerance. Have it adjusted again, or take it out of service.`,
};
