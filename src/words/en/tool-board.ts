/** The tool board in English: wrenches and adapters, calibrations, conditions, and the refusals that go with them. */

import type { WrenchCondition, WrenchKind } from '../../engine/torque';
import { dateText } from './time';
import { plural } from './writing';

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

const conditionNames: Readonly<Record<WrenchCondition, string>> = {
  'in service': 'in service',
  dropped: 'dropped',
  overloaded: 'overloaded',
  away: 'away',
  retired: 'retired',
};

const conditionDetails: Readonly<Record<WrenchCondition, string>> = {
  'in service': 'May be used',
  dropped: 'Not used until it has been calibrated',
  overloaded: 'Not used until it has been calibrated',
  away: 'At the laboratory, lent out or looked for',
  retired: 'Never used again; its history stays',
};

const kindNames: Readonly<Record<WrenchKind, string>> = {
  click: 'click wrench',
  preset: 'preset key',
  beam: 'beam wrench',
  dial: 'dial wrench',
  electronic: 'electronic wrench',
  screwdriver: 'torque screwdriver',
};

export const toolBoard = {
  title: 'Tool board',
  wrenches: 'In service',
  unfit: 'Not to be used',
  retired: 'Retired',
  adapters: 'Adapters',
  noAdapters: 'No adapters yet. Add the crowfoots and extensions that move a bolt off the drive.',
  add: 'Add a wrench',
  addAdapter: 'Add an adapter',
  edit: 'Change',
  open: (id: string) => `Wrench ${id}`,
  empty: 'No wrenches yet. Add the ones on your board, with their calibration dates.',
  caution:
    'A wrench that was dropped, overloaded or repaired is not used until it has been calibrated.',
  toLookInto: 'Bikes to look into',
  showBikes: 'Show the bikes',

  name: 'Name on the board',
  nameHint: 'One letter or a few; records know the wrench by it',
  description: 'What it is',
  kind: 'Kind',
  kindNames,
  type: 'Type',
  typeI: 'I · indicates (beam, dial, electronic)',
  typeII: 'II · set beforehand (click, preset)',
  class: 'Class',
  lowest: 'Lowest marked value',
  highest: 'Highest marked value',
  increment: 'Step of the scale',
  unit: 'Unit',
  calibrated: 'Calibrated on',
  due: 'Due on',
  operationsSoFar: 'Operations since then',
  condition: 'Condition',
  conditionNames,
  conditionDetails,
  save: 'Save the wrench',
  saveAdapter: 'Save the adapter',
  inService: 'in service',
  within: (percent: string) => `within ± ${percent} %`,
  byCertificate: (percent: string) => `within ± ${percent} % by its certificate`,
  wrong:
    'These values do not make a wrench: the lowest must lie below the highest, and the class must belong to the type.',

  dueIn: (date: string, days: number) =>
    days === 0 ? 'Due today' : `Due ${date}, in ${plural(days, 'day')}`,
  overdue: (date: string, days: number) => `Overdue by ${plural(days, 'day')}, was due ${date}`,
  worn: (most: number) => `${most} operations reached: calibrate it before it is used again`,
  since: (condition: string, date: string) => `${condition} since ${date}`,
  untilCalibrated: 'Not to be used until it has been calibrated',
  operations: (used: number, most: number) => `${used} of ${most} operations`,

  adapterName: 'What it is',
  grip: 'Drive to the middle of the grip, mm',
  offset: 'Drive to the bolt, mm',
  angle: 'Angle in degrees',
  angleHint: '0 in line outward, 90 square across, 180 pointing back at the hand',
  onWrench: 'Measured on wrench',
  anyWrench: 'any',
  adapterLine: (offset: string, angle: string, grip: string) =>
    `${offset} mm from the drive, ${angle}°, grip ${grip} mm`,
  adapterOn: (wrench: string) => `on wrench ${wrench}`,
  adapterWrong: 'Lengths are millimetres above nought, and the angle lies between −180 and 360.',
  retire: 'Retire',
  bringBack: 'Bring back',

  wrenchTitle: (id: string, name: string) => `${id} · ${name}`,
  back: 'Tool board',
  backToWrench: (id: string) => `Wrench ${id}`,
  enterCalibration: 'Enter a calibration',
  changeCondition: 'Change its condition',
  correct: 'Correct the description',
  range: 'Scale',
  step: (increment: string, unit: string) => `in steps of ${increment} ${unit}`,
  tolerance: 'Tolerance',
  calibration: 'Calibration',
  calibratedOn: (date: string) => `calibrated ${date}`,
  operationsLabel: 'Operations',
  history: 'History',
  noHistory: 'Nothing has been noted of this wrench yet.',

  conditionTitle: (id: string) => `What has happened to wrench ${id}?`,
  conditionOn: 'On which day',
  conditionReason: 'What happened, in a few words',
  quickReasons: {
    'in service': ['Back from loan', 'Found again', 'Back from the laboratory'],
    dropped: ['Fell off the bench', 'Fell from the stand', 'Fell on the floor in use'],
    overloaded: ['Used to loosen a bolt', 'Pulled past its highest value'],
    away: ['Sent to be calibrated', 'Lent out', 'Cannot be found'],
    retired: ['Worn out', 'Replaced by another', 'Not worth repairing'],
  },
  conditionSave: 'Note it',

  noteAdded: 'Put on the board',
  noteChanged: 'Description corrected',
  noteCondition: (to: string, date: string, reason: string) =>
    `${sentence(to)} on ${date}${reason === '' ? '' : `: ${reason}`}`,
  noteCalibrated: (date: string, due: string) => `Calibrated on ${date}, next due ${due}`,
  noteInside: 'Every point inside its tolerance as it came',
  noteNoValues: 'Passed, by a certificate without values',
  noteOutside: 'Found outside its tolerance as it came',
  noteAdjusted: (how: string) => `Put right: ${how}`,
  noteOutOfService: 'Not put right: it stayed out of service',
  noteReference: (reference: string) => `certificate ${reference}`,
  noteOperations: (count: number) => `after ${plural(count, 'operation')}`,
  noteCalledBack: (frame: string, say: string) => `${frame} called back: ${say}`,
  noteReopened: (frame: string, say: string) => `${frame}, steps reopened: ${say}`,
  noteBy: (name: string, when: string) => `${name}, ${when}`,
  found: 'As it came',
  left: 'As it left',
  at: 'Tested at',
  deviation: 'Out by',
  uncertainty: 'Uncertainty',
  inside: 'inside',
  outside: 'outside',
} as const;

export const calibrationLabels = {
  title: (id: string) => `Calibration of wrench ${id}`,
  certificate: 'The certificate',
  on: 'Calibrated on',
  dueOn: 'Next due on',
  dueHint: 'ISO 6789-1: after 12 months or 5000 operations, whichever comes first',
  reference: 'Certificate number',
  values: 'What does the certificate give?',
  withPoints: 'Values at test points',
  passedOnly: 'Only that it passed',
  passedOnlyDetail: 'Its class then says how far it may be out',
  way: 'How are they given?',
  asTrue: 'What the tester showed',
  asDeviation: 'Deviation in %',
  asTrueHint: 'The torque measured when the wrench showed or clicked at its value',
  asDeviationHint:
    'Signed as on the certificate: plus when the wrench shows more than is true. Where the certificate signs it the other way round, enter what the tester showed',
  withUncertainty: 'The certificate states uncertainties',
  found: 'As it came',
  left: 'As it left',
  at: (at: string, unit: string) => `At ${at} ${unit}`,
  pointAt: 'Test point',
  tester: (unit: string) => `Tester, ${unit}`,
  deviation: 'Out by, %',
  uncertainty: 'Uncertainty, ± %',
  cell: (column: string, point: string) => `${column} at ${point}`,
  empty: 'enter',
  addPoint: 'Add a test point',
  minus: '−',
  verdict: { inside: 'inside', outside: 'outside', missing: 'to enter' },
  allInside: (percent: string) => `Every point is inside ± ${percent} %.`,
  someOutside: (points: string, percent: string) =>
    `Outside ± ${percent} % at ${points}. Every bolt tightened with it since its last good calibration will be judged again.`,
  untested: (points: string) => `ISO 6789-1 tests ${points} too.`,
  goesOn: 'How does it go on?',
  goings: {
    'as-it-is': 'In service, as it came',
    adjusted: 'Adjusted or repaired, and measured again',
    away: 'Out of service, away for repair',
    retired: 'Out of service for good',
  },
  how: 'What was done',
  howQuick: ['Adjusted', 'Spring replaced and adjusted', 'Cleaned, oiled and adjusted'],
  keep: 'Keep the calibration',
  keepDetail: 'the ones before it stay',
  incomplete: 'Enter a value at every test point, or erase the point.',
  choose: 'Say how it goes on first.',
} as const;

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
