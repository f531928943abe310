/** How many markings are read in a second, against a bare pattern and a bare JSON.parse of the same texts in the same run. */

import { parsePressureMarking, parseTorqueMarking } from '../../src/engine/units';
import { medianOf, said } from './quantiles';
import { alternately } from './rounds';

const torqueMarkings = [
  '5 Nm',
  '4–6 N·m',
  'max. 5 N·m',
  '5-6 N.m (44-53 in.lb)',
  '60 kgf·cm',
  '3,5 Nm',
  '8 Nm ±10%',
  'min 4 Nm (35 in-lb) max 6 Nm (53 in-lb)',
  '35 ft-lb',
  'Tightening torque 12 N·m',
  'snug', // what is refused takes its time too
];
const pressureMarkings = [
  '40-65 psi',
  'MIN. 2.0 MAX. 3.5 BAR (30-50 PSI)',
  'max 4,5 bar',
  '300 kPa',
  'INFLATE TO 3.0-5.0 BAR',
];

/** The least that could find a figure and its unit: it knows neither bounds nor tolerances nor a second unit. */
const bare =
  /(\d+(?:[.,]\d+)?)(?:\s*[-–]\s*(\d+(?:[.,]\d+)?))?\s*(n[·.\-\s]?m|in[.\-\s]?lbs?|ft[.\-\s]?lbs?|kgf·c?m|psi|bar|kpa)/i;

const rounds = 400;
const warmUp = 100;
/** A bare round reads the same texts so many times more, or it would be too short to time. */
const moreOften = 50;

for (const [family, markings, parse] of [
  ['torque', torqueMarkings, parseTorqueMarking],
  ['pressure', pressureMarkings, parsePressureMarking],
] as const) {
  const texts = repeated(markings, 4);
  const often = repeated(texts, moreOften);
  const quoted = often.map((text) => JSON.stringify(text));
  const [parsed = [], matched = [], unquoted = []] = alternately(
    { rounds, warmUp },
    () => texts.filter((text) => parse(text).ok).length,
    () => often.filter((text) => bare.exec(text) !== null).length,
    () => quoted.filter((text) => JSON.parse(text) !== '').length,
  );
  const read = perThousand(texts.length, parsed);
  const pattern = perThousand(often.length, matched);
  const json = perThousand(often.length, unquoted);
  console.log(`\n1,000 ${family} markings, of ${markings.length} kinds in turn`);
  console.log(said('read as markings', read));
  console.log(said('one bare pattern', pattern));
  console.log(said('bare JSON.parse', json));
  console.log(`${Math.round(1e6 / medianOf(read)).toLocaleString('en')} markings a second`);
  console.log(`marking : bare pattern ${(medianOf(read) / medianOf(pattern)).toFixed(0)}`);
  console.log(`marking : bare JSON.parse ${(medianOf(read) / medianOf(json)).toFixed(0)}`);
}

function repeated(texts: readonly string[], times: number): readonly string[] {
  return Array.from({ length: times }, () => texts).flat();
}

function perThousand(count: number, times: readonly number[]): readonly number[] {
  return times.map((time) => (time * 1000) / count);
}
