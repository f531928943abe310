/** How torque is written: the spellings of each unit, and what stands beside a figure on a part. */

import type { Spelling, Writing } from './marking-tokens';
import type { TorqueUnit } from './torque-units';

const joint = String.raw`\s{0,4}[-‐‑–−.·•∙⋅・*×]?\s{0,4}`;
/** A full stop may close a word, but not where a number or the dots of a range begin with it. */
const stop = String.raw`(?:\.(?!\d|\.))?`;
const poundForce = String.raw`(?:lb(?:f|s)?|pounds?(?:[-\s]*force)?)${stop}`;
const inch = `(?:in(?:ch(?:es)?)?)${stop}`;
const foot = `(?:ft|foot|feet)${stop}`;
const kilogramForce = String.raw`(?:kgf?|kp|kilogram(?:me)?s?(?:[-\s]*force)?|kiloponds?)${stop}`;
const metre = 'm(?:[eè]t(?:er|re)s?)?';
const centimetre = 'c(?:m|entim[eè]t(?:er|re)s?)';

/** The word must end here: `N·m` is not the start of `N·max`, and `in.lb` may close with a full stop. */
const END = String.raw`(?!\p{L})${stop}`;

/** Two words in either order; lengths over pounds, as in `in/lb`, are how many parts are marked. */
const product = (length: string, force: string, slashed = '') =>
  new RegExp(`(?:${length}${joint}${force}|${force}${joint}${length}${slashed})${END}`, 'iuy');

export const torqueSpellings: readonly Spelling<TorqueUnit>[] = [
  { unit: 'N·m', pattern: new RegExp(`(?:n(?:ewtons?)?${joint}${metre}|н${joint}м)${END}`, 'iuy') },
  { unit: 'lbf·in', pattern: product(inch, poundForce, String.raw`|${inch}\s?/\s?${poundForce}`) },
  { unit: 'lbf·ft', pattern: product(foot, poundForce, String.raw`|${foot}\s?/\s?${poundForce}`) },
  { unit: 'kgf·cm', pattern: product(centimetre, kilogramForce) },
  { unit: 'kgf·m', pattern: product(metre, kilogramForce) },
];

/** A metric thread, how many of them, and the bit that turns them are printed beside the figure and are none of it. */
const thread = String.raw`(?:\d+\s?[x×]\s?)?m\d{1,2}(?:[.,]5)?(?:\s?[x×]\s?(?:[0-3][.,]\d{1,2}|[.,]\d{1,2}|[1-3](?![\d.,])))?(?![\p{L}\d])(?:\s+(?:bolts?|screws?)\b)?(?:\s+[-–—](?=\s)|\s?:)?`;
const starBit = String.raw`t(?:6|7|8|9|10|15|20|25|27|30|40|45|50|55)(?![\p{L}\d.,])(?:\s?:)?`;
const naming = String.raw`tighten(?:\s+to)?\b|each\b|anzugs(?:dreh)?moment\b:?|drehmoment\b:?|(?:tq|md|ma|t)\s?[=:]`;

export const torqueWriting: Writing<TorqueUnit> = {
  spellings: torqueSpellings,
  beside: new RegExp(`(?<![\\p{L}\\d])(?:${thread}|${starBit}|${naming})`, 'iuy'),
};
